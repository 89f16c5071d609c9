import type { Part } from '../../part/part.js';
import { planOf, type ShopPlan } from '../../plan/plan.js';
import { runsOf } from '../../plan/runs.js';
import { formsToSolid, stockForms } from '../../solid/build.js';
import { cutSolid } from '../../solid/combine.js';
import { HAND_SEGMENTS } from '../../solid/hand.js';
import type { Kernel } from '../../solid/kernel.js';
import type { Solid } from '../../solid/model.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { Speech } from '../say/texts.js';

/** The plan of a part's operations, and the work as it stands when each run of them is done. */
export interface PreparedOperations {
  readonly plan: ShopPlan;
  readonly states: readonly Solid[];
}

/** Facets in a full turn of the work in small pictures: its edges are drawn as true curves all the same. As the hands are compared. */
const PICTURE_SEGMENTS = HAND_SEGMENTS;

const known = new WeakMap<Part, readonly Solid[]>();

/** The work before all operations, and as each run of them leaves it; followed once for each part. */
export function workThrough(kernel: Kernel, part: Part): readonly Solid[] {
  const states = known.get(part) ?? follow(kernel, part);
  known.set(part, states);
  return states;
}

function follow(kernel: Kernel, part: Part): readonly Solid[] {
  const options = { segments: PICTURE_SEGMENTS };
  const states = [formsToSolid(kernel, stockForms(part), [], options)];
  for (const { operations } of runsOf(part)) {
    const before = states[states.length - 1]!;
    const forms = operations.flatMap((operation) => operation.cuts.flatMap((cut) => cut.forms.map((form) => ({ cut: cut.id, form }))));
    states.push(forms.length === 0 ? before : cutSolid(kernel, before, forms, options));
  }
  return states;
}

/**
 * Plans each run, given the work as it goes through them.
 * @param shop undefined for a typical small lathe and mill.
 */
export const preparedFrom = (part: Part, work: readonly Solid[], unit: Speech['unit'], shop?: Shop): PreparedOperations => ({
  plan: planOf(part, unit, shop, work),
  states: work.slice(1),
});

/** Follows the work from the stock through its set-ups, and plans each. */
export const prepareOperations = (kernel: Kernel, part: Part, unit: Speech['unit'], shop?: Shop): PreparedOperations => preparedFrom(part, workThrough(kernel, part), unit, shop);
