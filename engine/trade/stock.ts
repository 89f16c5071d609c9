import { nearestClause } from '../units/nearest-name.js';
import { parseLength, type LengthUnit } from '../units/length.js';
import { UserError } from '../units/user-error.js';
import { flatBars, stockLists } from './data/stock-sizes.js';
import { standardWireGauge } from './data/wire-gauges.js';

export type StockForm = string;

/** A size in which a form of metal is sold; `size` (diameter, across flats or thickness) and `width` in mm. */
export interface StockSize {
  readonly name: string;
  readonly form: StockForm;
  readonly unit: LengthUnit;
  readonly size: number;
  /** Flat bar only. */
  readonly width?: number;
  readonly source: string;
}

const custom = 'commonly stocked by hobby metal suppliers; common practice, no standard';

function simpleSizes(form: string, unit: LengthUnit, list: string): readonly StockSize[] {
  return list.split(' ').map((text) => ({ name: `${text} ${unit}`, form, unit, size: parseLength(text, { unit }), source: custom }));
}

const gauged = (name: string, form: string, inches: number, source: string): StockSize => ({ name, form, unit: 'in', size: Number((inches * 25.4).toFixed(5)), source });

/** American wire gauge, ASTM B258: d = 0.005 x 92^((36 - n)/39) inch, n from 4/0 (-3) to 40. */
const americanInches = (gauge: number): number => Number((0.005 * 92 ** ((36 - gauge) / 39)).toPrecision(6));

export const stock: readonly StockSize[] = [
  ...Object.entries(stockLists).flatMap(([form, lists]) => [...simpleSizes(form, 'in', lists.in), ...simpleSizes(form, 'mm', lists.mm)]),
  ...flatBars.flatMap(([unit, thickness, list]) =>
    list.split(' ').map((width): StockSize => ({
      name: `${thickness} x ${width} ${unit}`,
      form: 'flat bar',
      unit,
      size: parseLength(thickness, { unit }),
      width: parseLength(width, { unit }),
      source: custom,
    })),
  ),
  ...standardWireGauge.map((inches, index) => {
    const number = index - 6;
    return gauged(`${number > 0 ? number : number === 0 ? '0' : `${1 - number}/0`} SWG`, 'standard wire gauge', inches, 'Imperial Standard Wire Gauge, BS 3737 (memory), agrees with the definitions of the units program');
  }),
  ...Array.from({ length: 44 }, (_, index) => index - 3).map((number) =>
    gauged(`${number >= 0 ? number : `${1 - number}/0`} AWG`, 'american wire gauge', americanInches(number), 'ASTM B258 formula d = 0.005 x 92^((36 - n)/39) in'),
  ),
];

/** The forms by name, and other words for them. */
const formNames = [...new Set(stock.map(({ form }) => form))];
const formWords: Readonly<Record<string, string>> = {
  round: 'round bar', bar: 'round bar', rod: 'round bar', square: 'square bar', hexagon: 'hexagon bar', hex: 'hexagon bar', 'hex bar': 'hexagon bar',
  flat: 'flat bar', sheet: 'sheet/plate', plate: 'sheet/plate', 'drill rod': 'silver steel', swg: 'standard wire gauge', awg: 'american wire gauge', wire: 'standard wire gauge',
};

/**
 * The sizes of one form in one unit (both if not given), small to large.
 * @throws UserError for a form that is not in the table.
 */
export function stockSizes(form: StockForm, unit?: LengthUnit): readonly StockSize[] {
  const word = form.trim().toLowerCase();
  const name = formWords[word] ?? word;
  if (!formNames.includes(name)) {
    throw new UserError(`stock form "${form.trim()}" is not in the table: allowed are ${formNames.join(', ')}${nearestClause(form, formNames)}.`);
  }
  return stock.filter((row) => row.form === name && (unit === undefined || row.unit === unit)).sort((a, b) => a.size - b.size || (a.width ?? 0) - (b.width ?? 0));
}

/**
 * The stocked size nearest to `size` (mm); with `atLeast` the smallest that is not below it. `from` replaces the table.
 * @throws UserError where none is large enough.
 */
export function nearestStock(form: StockForm, size: number, options: { readonly atLeast?: boolean; readonly unit?: LengthUnit; readonly from?: readonly StockSize[] } = {}): StockSize {
  const sizes = options.from ?? stockSizes(form, options.unit);
  const allowed = options.atLeast === true ? sizes.filter((row) => row.size >= size - 1e-6) : sizes;
  const best = allowed.reduce<StockSize | undefined>((near, row) => (near === undefined || Math.abs(row.size - size) < Math.abs(near.size - size) - 1e-9 ? row : near), undefined);
  if (best === undefined) throw new UserError(`no ${form} of at least ${size} mm is in the table; the largest is ${sizes.at(-1)?.name ?? 'none'}.`);
  return best;
}
