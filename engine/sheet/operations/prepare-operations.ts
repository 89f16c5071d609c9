import type { Part } from '../../part/part.js';
import { planOf, type ShopPlan } from '../../plan/plan.js';
import { runsOf } from '../../plan/runs.js';
import { formsToSolid, stockForms } from '../../solid/build.js';
import { cutSolid } from '../../solid/combine.js';
import type { Kernel } from '../../solid/kernel.js';
import type { Solid } from '../../solid/model.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { Speech } from '../say/texts.js';

/** The plan of a part's operations, and the work as it stands when each run of them is done. */
export interface PreparedOperations {
  readonly plan: ShopPlan;
  readonly states: readonly Solid[];
}

/** The work as each run of operations finds it, the first finding the stock. */
export function statesBefore(kernel: Kernel, part: Part, stock: Solid): readonly Solid[] {
  const states = [stock];
  for (const { operations } of runsOf(part).slice(0, -1)) {
    const before = states[states.length - 1]!;
    const forms = operations.flatMap((operation) => operation.cuts.flatMap((cut) => cut.forms.map((form) => ({ cut: cut.id, form }))));
    states.push(forms.length === 0 ? before : cutSolid(kernel, before, forms));
  }
  return states;
}

/**
 * Plans each run, given the work as it finds it.
 * @param shop undefined for a typical small lathe and mill.
 */
export function preparedFrom(part: Part, befores: readonly Solid[], finished: Solid, unit: Speech['unit'], shop?: Shop): PreparedOperations {
  const last = runsOf(part).at(-1);
  const cuts = last?.operations.some((operation) => operation.cuts.some(({ forms }) => forms.length > 0)) === true;
  const states = last === undefined ? [] : [...befores.slice(1), cuts ? finished : befores[befores.length - 1]!];
  return { plan: planOf(part, unit, shop, [befores[0]!, ...states]), states };
}

/** Follows the work from the stock through its set-ups, and plans each. */
export const prepareOperations = (kernel: Kernel, part: Part, finished: Solid, unit: Speech['unit'], shop?: Shop): PreparedOperations =>
  preparedFrom(part, statesBefore(kernel, part, formsToSolid(kernel, stockForms(part), [])), finished, unit, shop);
