import type { Part } from './part.js';
import { stockSizes, type StockSize } from '../trade/stock.js';

/** What is bought for a part: the bar of the list that holds it, and what must come off that. */
export interface BarToBuy {
  /** Section of the blank, mm, small side first, and its length. */
  readonly section: readonly number[];
  readonly length: number;
  readonly material: string;
  /** The name in the list of what is sold; undefined where nothing there holds it. */
  readonly sold?: string;
  /** Whether it is sold in the very size. */
  readonly asSold: boolean;
}

const forms: Readonly<Record<Part['stock']['shape'], readonly string[]>> = { round: ['round bar', 'silver steel'], rectangular: ['square bar', 'flat bar'], hexagon: ['hexagon bar'] };

/** Sizes are the same within this, mm. */
const same = 0.01;

/** The least bar of the lists that a blank comes out of. Of a hexagon nothing can come off: it is there or it is not. */
export function barToBuy({ stock, material }: Part): BarToBuy {
  const section = [...stock.section].sort((a, b) => a - b);
  const rows = forms[stock.shape].filter((form) => form !== 'silver steel' || /silver steel/.test(material.name)).flatMap((form) => stockSizes(form));
  const holding = rows.filter((row) => sides(row, section.length).every((side, i) => (stock.shape === 'hexagon' ? Math.abs(side - section[i]!) <= same : side >= section[i]! - same)));
  const [least] = holding.sort((a, b) => area(a, section.length) - area(b, section.length));
  const asSold = least !== undefined && sides(least, section.length).every((side, i) => Math.abs(side - section[i]!) <= same);
  return { section, length: stock.length, material: material.name, ...(least === undefined ? {} : { sold: `${least.form} ${least.name}` }), asSold };
}

/** Small side first; a square has the same twice. */
const sides = ({ size, width }: StockSize, count: number): readonly number[] => (count === 1 ? [size] : [size, width ?? size].sort((a, b) => a - b));
const area = (row: StockSize, count: number): number => sides(row, count).reduce((product, side) => product * side, 1);
