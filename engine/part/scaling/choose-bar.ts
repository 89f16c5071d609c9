import type { Parameters } from '../parameters.js';
import { barSides, narrowest, soldBars, type BarSides, type SoldBar } from './bar-sides.js';
import type { ValuesByName } from './mend.js';
import { inWords } from './options.js';
import { exactly, type Outcome } from './rule.js';
import { farFromExact, STOCK_SOURCE } from './rules/stock.js';
import { nearestOf, type Snapped } from './snap.js';

/** What is chosen for the two sides of a part's bar. */
export interface BarChoice {
  readonly sides: BarSides;
  /** What becomes of the two sides; of a side that the user fixed nothing. */
  readonly outcomes: Readonly<Record<string, Outcome>>;
  /** The bars among which it may be moved: all that are sold and hold the part; none where the bar is cut to size. */
  readonly bars: readonly SoldBar[];
  /** Set where no bar sold comes near: the one that is brought down to size. */
  readonly broughtDown?: SoldBar;
}

export interface BarTask {
  readonly parameters: Parameters;
  /** As each rule left it by itself. */
  readonly ruled: ValuesByName;
  readonly outcomes: ReadonlyMap<string, Outcome>;
  readonly fixed: ReadonlySet<string>;
  /** How many relations are broken by such values. */
  readonly broken: (values: ValuesByName) => number;
}

/** A side so many times as large holds whatever there is to hold. */
const AMPLE = 10;

/**
 * A bar that is sold for a part whose bar has two sides: the side whose faces stay as near as may be to its exact size among the
 * bars that hold the part, and of those as thick the narrowest; where no face stays, the least bar that holds the part with
 * both its sides. A bar holds the part when no relation is broken for its sake. Where none comes near, a larger one that holds
 * the part at its exact size is brought down to it; where there is none either, both sides are left at their exact sizes.
 * @returns undefined where the part has no such bar, or both its sides are fixed.
 */
export function chooseBar({ parameters, ruled, outcomes, fixed, broken }: BarTask): BarChoice | undefined {
  const sides = barSides(parameters);
  if (sides === undefined || (fixed.has(sides.first) && fixed.has(sides.second))) return undefined;
  const { first, second, stays, unit } = sides;
  const set = (name: string): number | undefined => (fixed.has(name) ? (ruled[name] as number) : undefined);
  const wanted = { first: set(first) ?? outcomes.get(first)!.exact, second: set(second) ?? outcomes.get(second)!.exact };
  const brokenBy = (one: number, two: number): number => broken({ ...ruled, [first]: one, [second]: two });
  const holds = (one: number, two: number): boolean => brokenBy(one, two) <= brokenBy(stays ? one : AMPLE * wanted.first, AMPLE * wanted.second);
  const sold = soldBars(sides, { [first]: set(first), [second]: set(second) });
  const bars = sold.filter((bar) => holds(bar.first, bar.second));
  const steps = narrowest(bars).map((bar) => ({ size: bar.first, name: inWords(bar.first, unit), bar }));
  const snapped = stays && set(first) === undefined ? nearestOf(steps, wanted.first) : undefined;
  const taken = snapped?.option.bar ?? (stays && set(first) === undefined ? undefined : leastOf(bars));
  const common = (name: string) => ({ exact: outcomes.get(name)!.exact, rule: 'stock', source: STOCK_SOURCE });
  const choice = (one: Outcome, two: Outcome, rest: Pick<BarChoice, 'bars' | 'broughtDown'>): BarChoice => ({ sides, outcomes: Object.fromEntries([[first, one] as const, [second, two] as const].filter(([name]) => !fixed.has(name))), ...rest });

  if (taken !== undefined) {
    const one = snapped === undefined ? { because: `of ${taken.name}, the least sold that holds the part` } : nearestWords(snapped, steps, wanted.first);
    const two = `of ${taken.name}, the least sold ${stays ? 'so thick ' : ''}that holds the part`;
    return choice({ ...common(first), value: exactly(taken.first), ...one }, { ...common(second), rule: `sold with ${first}`, value: exactly(taken.second), because: two }, { bars });
  }
  const larger = leastOf(sold.filter((bar) => bar.first >= wanted.first && holds(wanted.first, bar.second)));
  if (larger !== undefined) {
    const one: Outcome = { ...common(first), value: exactly(wanted.first), because: `no bar so thick holds the part: ${larger.name} is brought down to it`, knockOn: ['its faces are milled to size first, and do not stay as bought'] };
    return choice(one, { ...common(second), rule: `sold with ${first}`, value: exactly(larger.second), because: `of ${larger.name}, the least sold that holds the part` }, { bars: [], broughtDown: larger });
  }
  const none = (name: string, size: number): Outcome => ({ ...common(name), value: exactly(size), because: 'no bar in the list holds the part: cut from plate, or ordered' });
  return choice(none(first, wanted.first), none(second, wanted.second), { bars: [] });
}

const leastOf = (bars: readonly SoldBar[]): SoldBar | undefined => [...bars].sort((a, b) => a.first * a.second - b.first * b.second)[0];

interface Step {
  readonly size: number;
  readonly name: string;
  readonly bar: SoldBar;
}

/** What is said of the nearest size, and asked where that is far off, with the next on the other side. */
function nearestWords({ option, half }: Snapped<Step>, steps: readonly Step[], exact: number): Pick<Outcome, 'because' | 'half' | 'decision'> {
  const others = steps.filter(({ size }) => (size - exact) * (option.size - exact) < 0).sort((a, b) => Math.abs(a.size - exact) - Math.abs(b.size - exact));
  const decision = farFromExact(exact, option, others.slice(0, 1));
  return { because: `the nearest in which bar is sold that holds the part, ${option.name}`, half, ...(decision === undefined ? {} : { decision }) };
}
