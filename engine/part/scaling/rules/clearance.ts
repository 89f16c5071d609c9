import type { LengthParameter } from '../../parameters.js';
import { exactly, type Outcome, type RuleTask } from '../rule.js';

/**
 * Play grows as what can be held to size grows: with the cube root of the diameter, as the standard tolerance unit
 * i = 0.45 D^(1/3) + 0.001 D does.
 */
export function clearanceRule({ value, factor }: RuleTask<LengthParameter>): Outcome {
  const size = value as number;
  return {
    value: exactly(size * Math.cbrt(factor)),
    exact: exactly(size * factor),
    rule: 'clearance',
    because: 'grows with the cube root of the size, as tolerances do',
    source: 'ISO 286-1, standard tolerance unit',
  };
}
