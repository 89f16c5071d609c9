import { stockSizes } from '../trade/stock.js';
import { formatLength } from '../units/format.js';
import { UserError } from '../units/user-error.js';
import { systemOf } from './limits.js';
import type { StockParameter } from './parameters.js';

/** The trade's forms in which a section is sold. Either side of a rectangular bar counts: thickness or width. */
const FORMS: Readonly<Record<StockParameter['form'], readonly string[]>> = {
  round: ['round bar', 'silver steel'],
  rectangular: ['square bar', 'flat bar'],
  hexagon: ['hexagon bar'],
  sheet: ['sheet/plate'],
};

/** Sizes agree when they are as near as this, mm. */
const SAME = 1e-4;

/**
 * A size of stock, checked to be one that is sold.
 * @param size mm, as read from `text`.
 * @returns mm.
 * @throws UserError where no such size is sold, with the sizes next to it in the system of `text`.
 */
export function readStock(name: string, form: StockParameter['form'], size: number, text: string): number {
  const rows = FORMS[form].flatMap((trade) => stockSizes(trade));
  const sold = rows.flatMap(({ size: side, width, unit }) => [side, width ?? side].map((value) => ({ value, unit })));
  if (sold.some(({ value }) => Math.abs(value - size) <= SAME)) return size;
  const unit = systemOf(text);
  const near = sold.filter((one) => one.unit === unit).map(({ value }) => value);
  const below = Math.max(...near.filter((value) => value < size));
  const above = Math.min(...near.filter((value) => value > size));
  const nearest = [below, above].filter(Number.isFinite).map((value) => `${formatLength(value, unit)} ${unit}`);
  throw new UserError(`${name} "${text}" is no size in which ${form} stock is sold: the nearest ${nearest.length === 1 ? 'is' : 'are'} ${nearest.join(' and ')}.`);
}
