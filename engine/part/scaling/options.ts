import { endMillSizes, sawSizes } from '../../trade/data/cutter-sizes.js';
import { reamerSizes } from '../../trade/data/centre-drills.js';
import { drills } from '../../trade/drills.js';
import { stockSizes } from '../../trade/stock.js';
import { parseLength, type LengthUnit } from '../../units/length.js';
import type { Drill } from '../../trade/drills.js';
import type { Thread } from '../../trade/threads.js';
import { systemOf } from '../limits.js';
import type { Follows, StockParameter } from '../parameters.js';

/** A size that is made or sold: what it measures, mm, its name, and what a part's functions get for it. */
export interface Option {
  readonly size: number;
  readonly name: string;
  readonly value: number | Drill | Thread;
}

/** Sizes that are the same within this, mm. */
export const SAME = 1e-6;

const listed = (list: string, unit: LengthUnit, factor = 1): readonly Option[] =>
  list.split(' ').map((text) => {
    const size = factor * parseLength(text, { unit });
    return { size, name: `${text} ${unit}`, value: size };
  });

/** Small to large, each size once. */
const inOrder = (options: readonly Option[]): readonly Option[] =>
  [...options].sort((a, b) => a.size - b.size).filter((option, i, all) => i === 0 || option.size - all[i - 1]!.size > SAME);

const cornerName = (option: Option): Option => ({ ...option, name: `half of ${option.name}` });

/** Sizes of what a length is made or bought by; undefined where it follows nothing that has sizes of its own. */
export function optionsToFollow(follows: Follows | undefined, unit: LengthUnit): readonly Option[] | undefined {
  switch (follows) {
    case 'reamer':
      return listed(reamerSizes[unit], unit);
    case 'ground rod':
      return inOrder(stockSizes('silver steel', unit).map(({ size, name }) => ({ size, name, value: size })));
    case 'end mill':
      return listed(endMillSizes[unit], unit);
    case 'corner of an end mill':
      return listed(endMillSizes[unit], unit, 0.5).map(cornerName);
    case 'saw diameter':
      return listed(sawSizes.diameter[unit], unit);
    case 'saw thickness':
      return listed(sawSizes.thickness[unit], unit);
    case 'edge':
    case 'shop':
    case undefined:
      return undefined;
  }
}

const forms: Readonly<Record<StockParameter['form'], readonly string[]>> = {
  round: ['round bar', 'silver steel'],
  rectangular: ['square bar', 'flat bar'],
  hexagon: ['hexagon bar'],
  sheet: ['sheet/plate'],
};

/** Sizes of bar that are sold, in one unit; of flat bar both sides count. */
export const stockOptions = ({ form, section }: StockParameter, unit: LengthUnit): readonly Option[] =>
  inOrder(
    (section === undefined ? forms[form] : [`${section} bar`]).flatMap((trade) =>
      stockSizes(trade, unit).flatMap(({ size, width }) => [size, ...(width === undefined ? [] : [width])].map((side) => ({ size: side, name: inWords(side, unit), value: side }))),
    ),
  );

/** A size of bar as it is sold: "1-3/4 in", "40 mm". */
export function inWords(size: number, unit: LengthUnit): string {
  if (unit === 'mm') return `${Number(size.toFixed(3))} mm`;
  const sixtyFourths = Math.round((size / 25.4) * 64);
  const [whole, rest] = [Math.floor(sixtyFourths / 64), sixtyFourths % 64];
  const divisor = [32, 16, 8, 4, 2, 1].find((candidate) => rest % candidate === 0) ?? 1;
  const fraction = rest === 0 ? '' : `${rest / divisor}/${64 / divisor}`;
  return `${[...(whole > 0 ? [String(whole)] : []), ...(fraction === '' ? [] : [fraction])].join('-')} in`;
}

/** Drills of the system of one: inch drills by number, letter and fraction, or metric ones. */
export const drillOptions = (like: Drill): readonly Option[] =>
  inOrder(drills.filter(({ series }) => (series === 'metric') === (like.series === 'metric')).map((drill) => ({ size: drill.diameter, name: drill.name, value: drill })));

/** The unit in whose sizes a parameter is kept: the one that its default is written in. */
export const unitOf = (parameter: { readonly default: string }): LengthUnit => systemOf(parameter.default);
