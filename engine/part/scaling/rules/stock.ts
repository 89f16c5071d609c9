import type { StockParameter } from '../../parameters.js';
import { stockOptions, unitOf } from '../options.js';
import { signedWhole } from '../near-decimals.js';
import { exactly, type Outcome, type RuleTask } from '../rule.js';
import { nearestOf } from '../snap.js';

/** Where faces stay as bought, so much off is seen, part of one: common practice. */
const FAR = 0.05;

export const STOCK_SOURCE = 'sizes commonly stocked by hobby metal suppliers, larger ones as mills draw them';

/** Asked where the size nearest is far off and its faces stay; `others` are the next on the other side. */
export function farFromExact(exact: number, taken: NamedSize, others: readonly NamedSize[]): string | undefined {
  if (Math.abs(taken.size / exact - 1) <= FAR) return undefined;
  const against = (size: number): string => `${signedWhole(100 * (size / exact - 1))} % against exact scaling`;
  return `${taken.name} is ${against(taken.size)}, and its faces stay${others.map((other) => `; ${other.name} would be ${against(other.size)}`).join('')}`;
}

interface NamedSize {
  readonly size: number;
  readonly name: string;
}

/** Bar, plate and sheet are bought: the nearest size that is sold, in the unit of the part; the part is fitted to it. */
export function stockRule({ parameter, value, factor }: RuleTask<StockParameter>): Outcome {
  const exact = exactly((value as number) * factor);
  const options = stockOptions(parameter, unitOf(parameter));
  const common = { exact, rule: 'stock', source: STOCK_SOURCE };
  const snapped = nearestOf(options, exact);
  if (snapped !== undefined) {
    const { option, half } = snapped;
    const other = options.filter(({ size }) => (size - exact) * (option.size - exact) < 0).sort((a, b) => Math.abs(a.size - exact) - Math.abs(b.size - exact)).slice(0, 1);
    const decision = parameter.stays === true ? farFromExact(exact, option, other) : undefined;
    return { ...common, value: exactly(option.size), because: `the nearest${decision === undefined ? ` ${parameter.form === 'rectangular' ? 'bar' : parameter.form}` : ''} sold, ${option.name}`, half, ...(decision === undefined ? {} : { decision }) };
  }
  const small = exact < options[0]!.size;
  const end = small ? options[0]! : options.at(-1)!;
  return {
    ...common,
    value: exact,
    because: small ? 'smaller than any that is sold: brought down to size' : 'larger than any in the list: cut from plate, or ordered',
    decision: `the ${small ? 'smallest' : 'largest'} listed is ${end.name}: find out what can be bought, and set it`,
  };
}
