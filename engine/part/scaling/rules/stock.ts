import type { StockParameter } from '../../parameters.js';
import { stockOptions, unitOf } from '../options.js';
import { exactly, type Outcome, type RuleTask } from '../rule.js';
import { nearestOf } from '../snap.js';

/** Where faces stay as bought, so much off is seen, part of one: common practice. */
const FAR = 0.05;

/** Bar, plate and sheet are bought: the nearest size that is sold, in the unit of the part; the part is fitted to it. */
export function stockRule({ parameter, value, factor }: RuleTask<StockParameter>): Outcome {
  const exact = exactly((value as number) * factor);
  const options = stockOptions(parameter, unitOf(parameter));
  const common = { exact, rule: 'stock', source: 'sizes commonly stocked by hobby metal suppliers' };
  const snapped = nearestOf(options, exact);
  if (snapped !== undefined && parameter.stays === true && Math.abs(snapped.option.size / exact - 1) > FAR) {
    const other = options.filter(({ size }) => (size - exact) * (snapped.option.size - exact) < 0).sort((a, b) => Math.abs(a.size - exact) - Math.abs(b.size - exact))[0];
    const against = (size: number): string => `${(100 * (size / exact - 1)).toFixed(0)} % against exact scaling`;
    const decision = `${snapped.option.name} is ${against(snapped.option.size)}, and its faces stay${other === undefined ? '' : `; ${other.name} would be ${against(other.size)}`}`;
    return { ...common, value: exactly(snapped.option.size), because: `the nearest sold, ${snapped.option.name}`, half: snapped.half, decision };
  }
  if (snapped !== undefined) return { ...common, value: exactly(snapped.option.size), because: `the nearest ${parameter.form === 'rectangular' ? 'bar' : parameter.form} sold, ${snapped.option.name}`, half: snapped.half };
  const small = exact < options[0]!.size;
  const end = small ? options[0]! : options.at(-1)!;
  return {
    ...common,
    value: exact,
    because: small ? 'smaller than any that is sold: brought down to size' : 'larger than any in the list: cut from plate, or ordered',
    decision: `the ${small ? 'smallest' : 'largest'} listed is ${end.name}: find out what can be bought, and set it`,
  };
}
