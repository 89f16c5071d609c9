import type { LengthParameter } from '../../parameters.js';
import { exactly, type Outcome, type RuleTask } from '../rule.js';

/** Lengths of the part itself grow with it, exactly; only relations move them afterwards. */
export function lengthRule({ value, factor }: RuleTask<LengthParameter>): Outcome {
  const exact = exactly((value as number) * factor);
  return { value: exact, exact, rule: 'length', because: 'grows with the part', source: 'geometry' };
}
