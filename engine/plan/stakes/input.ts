import type { Part } from '../../part/part.js';
import type { Maker } from '../../solid/hand-makers.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import type { Beside } from '../order/beside.js';
import type { ShopPlan } from '../plan.js';
import type { OperationState } from '../states/state.js';

/** What the stakes of a part are worked out from. */
export interface StakesInput {
  readonly part: Part;
  /** The work before and after each operation, in their order. */
  readonly states: readonly OperationState[];
  /** Cutters, speeds and feeds. */
  readonly plan: ShopPlan;
  /** Undefined for a typical small lathe and mill. */
  readonly shop: Shop | undefined;
  readonly unit: LengthUnit;
  /** The cuts that make the hand of the part, as the comparison with its mirror image has them; none if it has no hand. */
  readonly makers?: readonly Maker[];
  /** What stands beside the cuts of an operation, where that is known already; worked out if not given. */
  readonly besides?: (operation: number) => readonly Beside[];
  /** What a rehearsal of an operation costs, hours, where a test piece was worked out; undefined for the estimate. */
  readonly costOf?: (operation: number) => number | undefined;
}
