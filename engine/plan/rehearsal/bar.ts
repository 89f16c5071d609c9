import type { Part } from '../../part/part.js';
import { clear } from '../../part/author/room.js';
import { stockSizes, type StockSize } from '../../trade/stock.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { Side } from './blank-sides.js';

/** So much of a bar stands out on two opposite sides, from where the metal is needed, mm. */
export interface Skin {
  readonly low: number;
  readonly high: number;
}

/** A bar that holds what is needed across it. */
export interface Bar {
  /** Width along the first axis and along the second; a diameter; across flats. Mm. */
  readonly section: readonly number[];
  readonly skins: readonly [Skin, Skin];
}

/** What is skimmed off a round bar that has no size to the thousandth, mm of diameter (common practice). */
const skim = 0.5;

/** Open cuts run so far out of the part's own bar, less a little: a blank must not stand out farther. */
const beyond = clear - 0.1;

/** Sections of bar as sold, or as on the shelf where the shop says what is there. */
function sections(shop: Shop | undefined, form: string): readonly StockSize[] {
  const shelf = shop?.stock?.filter((size) => size.form === form) ?? [];
  return shelf.length > 0 ? shelf : stockSizes(form);
}

/** The smallest bar that holds what lies between two pairs of sides; in the end the part's own does. */
export function flatBar(part: Part, shop: Shop | undefined, u: readonly [Side, Side], v: readonly [Side, Side]): Bar {
  const [wide, high] = [u[1].at - u[0].at, v[1].at - v[0].at];
  const own: Bar = {
    section: [u[1].bar - u[0].bar, v[1].bar - v[0].bar],
    skins: [{ low: u[0].at - u[0].bar, high: u[1].bar - u[1].at }, { low: v[0].at - v[0].bar, high: v[1].bar - v[1].at }],
  };
  const sizes = [...sections(shop, 'flat bar').map(({ size, width, unit }) => ({ a: size, b: width ?? size, unit })), ...sections(shop, 'square bar').map(({ size, unit }) => ({ a: size, b: size, unit }))];
  const found = sizes
    .flatMap(({ a, b, unit }) => [[a, b, unit], [b, a, unit]] as const)
    .flatMap(([a, b, unit]): { bar: Bar; unit: string }[] => {
      const skins = [skinOf(u, a - wide), skinOf(v, b - high)] as const;
      return skins[0] === undefined || skins[1] === undefined ? [] : [{ bar: { section: [a, b], skins: [skins[0], skins[1]] }, unit }];
    })
    .sort((x, y) => area(x.bar) - area(y.bar) || Number(y.unit === part.units) - Number(x.unit === part.units));
  // A bar in the unit of the part is preferred where it is hardly larger.
  const [least] = found;
  const familiar = found.find(({ bar, unit }) => unit === part.units && area(bar) <= 1.1 * area(least!.bar));
  const best = (familiar ?? least)?.bar;
  return best === undefined || area(own) <= area(best) + 1e-6 ? own : best;
}

const area = ({ section }: Bar): number => section.reduce((product, side) => product * side, 1);

/** Where a bar's excess stands out: on a side where the metal just ends, else where the part's own cut takes it off. */
function skinOf([low, high]: readonly [Side, Side], excess: number): Skin | undefined {
  if (excess < -1e-6) return undefined;
  if (excess < 1e-6) return { low: 0, high: 0 };
  const room = (side: Side): number => (side.end === 'low' ? side.at - side.bar : side.bar - side.at) + beyond;
  for (const side of [low, high].filter(({ station }) => station === undefined)) if (excess <= room(side)) return side.end === 'low' ? { low: excess, high: 0 } : { low: 0, high: excess };
  if (low.cut === undefined || high.cut === undefined) {
    const side = [high, low].find(({ cut }) => cut !== undefined);
    return side === undefined || excess > room(side) ? undefined : side.end === 'low' ? { low: excess, high: 0 } : { low: 0, high: excess };
  }
  return excess / 2 <= Math.min(room(low), room(high)) ? { low: excess / 2, high: excess / 2 } : undefined;
}

/** The smallest round bar for metal out to a radius; with a skim where the part has its surface from a cut. */
export function roundBar(part: Part, shop: Shop | undefined, radius: number): number {
  const own = part.stock.section[0]!;
  if (2 * radius > own - skim) return own;
  const fitting = sections(shop, 'round bar').filter(({ size }) => size >= 2 * radius + skim && size < own);
  const [least] = [...fitting].sort((a, b) => a.size - b.size);
  const familiar = fitting.filter(({ unit, size }) => unit === part.units && size <= 1.1 * least!.size).sort((a, b) => a.size - b.size)[0];
  return (familiar ?? least)?.size ?? own;
}
