import type { Part } from '../../part/part.js';
import { findingsOf } from '../../plan/order/findings.js';
import type { ShopPlan } from '../../plan/plan.js';
import { stakesOf } from '../../plan/stakes/stakes-of.js';
import type { OperationState } from '../../plan/states/state.js';
import type { HandComparison } from '../../solid/hand.js';
import type { Kernel } from '../../solid/kernel.js';
import { defaultShop, type Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import type { Finding } from '../../plan/finding.js';
import type { Stake } from '../../plan/stakes/stake.js';
import { stopsOf, type Stop } from '../../plan/order/stops.js';

/** What is found out about a part by working it through: its order, where to stop, and what stands at stake. */
export interface Judged {
  readonly findings: readonly Finding[];
  readonly stops: readonly Stop[];
  readonly stakes: readonly Stake[];
}

/** @param comparison of the part with its mirror image. */
export function judge(kernel: Kernel, part: Part, states: readonly OperationState[], plan: ShopPlan, comparison: HandComparison, shop: Shop | undefined, unit: LengthUnit): Judged {
  return {
    findings: findingsOf(kernel, part, states, shop ?? defaultShop, unit, comparison),
    stops: stopsOf(part, states, comparison),
    stakes: stakesOf({ part, states, plan, shop, unit, makers: comparison.makers }),
  };
}
