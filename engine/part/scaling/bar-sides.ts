import { stockSizes } from '../../trade/stock.js';
import type { LengthUnit } from '../../units/length.js';
import type { Parameters, StockParameter } from '../parameters.js';
import { SAME, unitOf } from './options.js';

/** The two sides of the one rectangular bar of a part, by the names of their parameters. */
export interface BarSides {
  /** The side that counts most: the one whose faces stay, else the first of the two. */
  readonly first: string;
  readonly second: string;
  /** Whether the faces of the first stay as bought. */
  readonly stays: boolean;
  readonly unit: LengthUnit;
}

/** A bar that is sold, as it would lie in the part: mm along the first and the second side. */
export interface SoldBar {
  readonly first: number;
  readonly second: number;
  readonly name: string;
}

/** Of a part with two sizes of flat bar these are sides of one bar; a square bar has one size, and more than two are no one bar. */
export function barSides(parameters: Parameters): BarSides | undefined {
  const sides = Object.entries(parameters).filter((entry): entry is [string, StockParameter] => entry[1].kind === 'stock' && entry[1].form === 'rectangular' && entry[1].section !== 'square');
  if (sides.length !== 2) return undefined;
  const staying = sides.filter(([, { stays }]) => stays === true);
  const [first] = staying[0] ?? sides[0]!;
  const [second] = sides.find(([name]) => name !== first)!;
  return { first, second, stays: staying.length === 1, unit: unitOf(sides[0]![1]) };
}

/** Every flat bar and square bar that is sold, either way round; with the sizes that are fixed, where some are. */
export function soldBars({ first, second, unit }: BarSides, fixed: Readonly<Record<string, number | undefined>>): readonly SoldBar[] {
  const bars = ['flat bar', 'square bar'].flatMap((form) =>
    stockSizes(form, unit).flatMap(({ size, width = size, name }): readonly SoldBar[] => {
      const bar = { first: size, second: width, name: `${form} ${name}` };
      return size === width ? [bar] : [bar, { ...bar, first: width, second: size }];
    }),
  );
  const fits = (wanted: number | undefined, size: number): boolean => wanted === undefined || Math.abs(wanted - size) <= SAME;
  return bars.filter((bar) => fits(fixed[first], bar.first) && fits(fixed[second], bar.second));
}

/** The bars by their first side, small to large, of each the one that is narrowest on the second. */
export function narrowest(bars: readonly SoldBar[]): readonly SoldBar[] {
  const sizes = [...new Set(bars.map(({ first }) => first))].sort((a, b) => a - b);
  return sizes.map((size) => bars.filter(({ first }) => first === size).reduce((least, bar) => (bar.second < least.second ? bar : least)));
}

