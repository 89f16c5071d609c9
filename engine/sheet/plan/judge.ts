import type { Part } from '../../part/part.js';
import type { OperationState } from '../../plan/states/state.js';
import type { Kernel } from '../../solid/kernel.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import type { Judged } from './plan-ground.js';

/** Works a part through: what is found out about its order, where to stop, and what stands at stake. */
export function judge(kernel: Kernel, part: Part, states: readonly OperationState[], shop: Shop | undefined, unit: LengthUnit): Judged {
  void [kernel, part, states, shop, unit];
  return { findings: [], stops: [], stakes: [] };
}
