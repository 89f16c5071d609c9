import { stockSizes } from '../trade/stock.js';
import { formatLength } from '../units/format.js';
import { parseLength } from '../units/length.js';
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
 * A size of stock, checked to be one that is sold. A size beyond the parameter's limits passes: the limits refuse it.
 * @param size mm, as read from `text`.
 * @returns mm.
 * @throws UserError where no such size is sold, with the sizes within the limits next to it in the system of `text`.
 */
export function readStock(name: string, parameter: StockParameter, size: number, text: string): number {
  const { form, minimum, maximum } = parameter;
  const [least, greatest] = [parseLength(minimum, { what: 'limit' }), parseLength(maximum, { what: 'limit' })];
  const allowed = (value: number): boolean => value >= least - SAME && value <= greatest + SAME;
  if (!allowed(size)) return size;
  const rows = FORMS[form].flatMap((trade) => stockSizes(trade));
  const sold = rows.flatMap(({ size: side, width, unit }) => [side, width ?? side].map((value) => ({ value, unit })));
  if (sold.some(({ value }) => Math.abs(value - size) <= SAME)) return size;
  const unit = systemOf(text);
  const near = sold.filter((one) => one.unit === unit && allowed(one.value)).map(({ value }) => value);
  const below = Math.max(...near.filter((value) => value < size));
  const above = Math.min(...near.filter((value) => value > size));
  const nearest = [below, above].filter(Number.isFinite).map((value) => `${formatLength(value, unit)} ${unit}`);
  const choice = nearest.length === 0 ? `none is within the limits, ${minimum} to ${maximum}` : `the nearest ${nearest.length === 1 ? 'is' : 'are'} ${nearest.join(' and ')}`;
  throw new UserError(`${name} "${text}" is no size in which ${form} stock is sold: ${choice}.`);
}
