import type { Drill } from '../../../trade/drills.js';
import type { DrillParameter } from '../../parameters.js';
import { drillOptions } from '../options.js';
import { exactly, type Outcome, type RuleTask } from '../rule.js';
import { nearestOf } from '../snap.js';

/** A drill that exists, of the same system. */
export function drillRule({ name, value, factor }: RuleTask<DrillParameter>): Outcome {
  const drill = value as Drill;
  const exact = exactly(drill.diameter * factor);
  const options = drillOptions(drill);
  const common = { exact, rule: 'drill', source: drill.source };
  const snapped = nearestOf(options, exact);
  if (snapped !== undefined) return { ...common, value: snapped.option.value, because: `the nearest drill, ${snapped.option.name}`, half: snapped.half };
  const small = exact < options[0]!.size;
  const end = small ? options[0]! : options.at(-1)!;
  return { ...common, value, because: 'no such drill', cannot: `${name} would need a drill of ${exact.toFixed(3)} mm, and the ${small ? 'smallest' : 'largest'} is ${end.name}` };
}
