import type { Part } from '../../engine/part/part.js';
import { mirrorPart } from '../../engine/part/mirror.js';
import { planOf, type OperationPlan, type ShopPlan } from '../../engine/plan/plan.js';
import { readShop } from '../../engine/trade/shop/read-shop.js';
import type { Shop } from '../../engine/trade/shop/shop.js';
import { builtInPart } from '../support/built-in-part.js';

/** Millimetres of an inch. */
export const inch = 25.4;

export async function partOfHand(name: string, hand: 'right' | 'left'): Promise<Part> {
  const part = await builtInPart(name);
  return hand === 'right' ? part : mirrorPart(part);
}

/** The plan of an operation of a built-in part, told in inches. */
export async function planned(name: string, number: number, options: { readonly hand?: 'right' | 'left'; readonly shop?: Shop } = {}): Promise<OperationPlan> {
  return inPlan(planOf(await partOfHand(name, options.hand ?? 'right'), 'in', options.shop), number);
}

export function inPlan(plan: ShopPlan, number: number): OperationPlan {
  const found = plan.runs.flatMap(({ operations }) => operations).find((operation) => operation.number === number);
  if (found === undefined) throw new Error(`no operation ${number}`);
  return found;
}

/** An inch workshop with a read-out on the mill, and a few tools. */
export const smallInchShop = readShop(`units: in
machines:
  - {name: lathe, kind: lathe, swing: 7, speeds: [60, 120, 240, 400, 700, 1200], dials: {cross: {per-turn: 0.1, division: 0.001, reads: diameter}, saddle: {per-turn: 0.7, division: 0.01}}}
  - {name: mill, kind: mill, speeds: {from: 100, to: 5000}, read-out: true}
drills: ["#1 to #60", "1/16 to 1/2 in by 1/64 in"]
taps: [5-40, 1/4x40]
dies: []
reamers: [3/16]
cutters: [{diameter: 1/8}, {diameter: 1/4}, {diameter: 3/8}]
stock: [{form: flat bar, size: 1, width: 1 1/2, material: 11SMn30}]
`);
