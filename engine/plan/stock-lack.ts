import type { Part } from '../part/part.js';
import type { ShelfStock, Shop } from '../trade/shop/shop.js';
import { figure } from './figures.js';
import { materialOf } from './material.js';
import type { Listener } from './shop-machine.js';
import type { Lack } from './to-get.js';

/** Rounding between a size as written and as sold, mm. */
const same = 0.01;

/** The bar that the shelf does not have, with the nearest larger that it has. */
export function stockLack(part: Part, { shop, unit }: Listener): readonly Lack[] {
  const shelf = shop.stock;
  if (shelf === undefined) return [];
  const right = shelf.filter((bar) => isShape(bar, part) && isMaterial(bar, part) && (bar.length === undefined || bar.length >= part.stock.length - same));
  const exact = right.some((bar) => sides(bar).every((side, i) => Math.abs(side - wanted(part)[i]!) <= same));
  if (exact) return [];
  const size = wanted(part).map((mm) => figure(mm, unit)).join(' x ');
  const toGet = `${size} ${unit} ${part.stock.shape === 'rectangular' ? 'flat' : part.stock.shape} bar, ${part.material.name}, ${figure(part.stock.length, unit)} long`;
  const larger = right.filter((bar) => sides(bar).every((side, i) => side >= wanted(part)[i]! - same)).sort((a, b) => area(a) - area(b))[0];
  const instead = larger === undefined ? 'nothing on the shelf holds the part' : `from the shelf ${sides(larger).map((mm) => figure(mm, unit)).join(' x ')} ${unit} must first come down to size`;
  return [{ toGet, instead }];
}

const forms: Readonly<Record<Part['stock']['shape'], readonly string[]>> = {
  round: ['round bar', 'silver steel'],
  rectangular: ['flat bar', 'square bar', 'sheet/plate'],
  hexagon: ['hexagon bar'],
};

const isShape = (bar: ShelfStock, part: Part): boolean => forms[part.stock.shape].includes(bar.form);

/** A bar whose material is not written may be any; silver steel is a form of its own in the lists. */
function isMaterial(bar: ShelfStock, part: Part): boolean {
  const material = materialOf(part.material)?.name;
  const written = bar.material ?? (bar.form === 'silver steel' ? 'silver steel' : undefined);
  return material === undefined || written === undefined || written === material;
}

/** Small side first. */
const wanted = (part: Part): readonly number[] => [...part.stock.section].sort((a, b) => a - b);
const sides = (bar: ShelfStock): readonly number[] => (bar.form === 'square bar' ? [bar.size, bar.size] : bar.width === undefined ? [bar.size] : [bar.size, bar.width]).sort((a, b) => a - b);
const area = (bar: ShelfStock): number => sides(bar).reduce((product, side) => product * side, 1);

/** Whether any list of the shop's file says what it has: else there is nothing to compare with. */
export const listsAnything = (shop: Shop): boolean => [shop.drills, shop.taps, shop.dies, shop.reamers, shop.cutters, shop.stock].some((list) => list !== undefined);
