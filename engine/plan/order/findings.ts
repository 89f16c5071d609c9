import type { Part } from '../../part/part.js';
import type { Kernel } from '../../solid/kernel.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import type { Finding } from '../finding.js';
import type { OperationState } from '../states/state.js';
import { contextOf, type Check } from './context.js';
import { cutterLength } from './cutter-length.js';
import { cutterRoom } from './cutter-room.js';
import { drillExit } from './drill-exit.js';
import { drillStart } from './drill-start.js';
import { grip } from './grip.js';
import { holderRoom } from './holder-room.js';

const checks: readonly Check[] = [grip, cutterRoom, cutterLength, holderRoom, drillStart, drillExit];

/** What is to be said of the order in which a part is made, operation after operation. */
export function findingsOf(_kernel: Kernel, part: Part, states: readonly OperationState[], shop: Shop, unit: LengthUnit): readonly Finding[] {
  const context = contextOf(part, states, shop, unit);
  return states.flatMap((state) => checks.flatMap((check) => check(context, state)));
}
