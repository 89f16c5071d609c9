import type { Part } from '../../part/part.js';
import { compareHands, type HandComparison } from '../../solid/hand.js';
import type { Kernel } from '../../solid/kernel.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import type { Finding } from '../finding.js';
import type { OperationState } from '../states/state.js';
import { blindWall } from './blind-wall.js';
import { contextOf, type Check } from './context.js';
import { cutterLength } from './cutter-length.js';
import { cutterRoom } from './cutter-room.js';
import { datum } from './datum.js';
import { drillExit } from './drill-exit.js';
import { drillStart } from './drill-start.js';
import { finishedGripped } from './finished-gripped.js';
import { grip } from './grip.js';
import { handFindings } from './hand-operation.js';
import { holderRoom } from './holder-room.js';
import { overhang } from './overhang.js';
import { tapDepth } from './tap-depth.js';
import { wallLeft } from './wall-left.js';

/** All checks of one operation, in the order in which one thinks of them: hold, datum, reach, start, end, what is left. */
export const checks: readonly Check[] = [grip, finishedGripped, datum, overhang, cutterRoom, cutterLength, holderRoom, drillStart, drillExit, tapDepth, blindWall, wallLeft];

/**
 * What is to be said of the order in which a part is made, operation after operation. Nothing fatal is in it for a part that
 * can be made as its operations say.
 * @param states as `statesOf` gives them for the same part.
 * @param unit in which cutters are chosen where none is named.
 * @param comparison of the part with its mirror image; worked out where it is not given.
 */
export function findingsOf(kernel: Kernel, part: Part, states: readonly OperationState[], shop: Shop, unit: LengthUnit, comparison: HandComparison = compareHands(kernel, part)): readonly Finding[] {
  const context = contextOf(part, states, shop, unit);
  const hand = handFindings(part, states, comparison);
  return states.flatMap((state) => {
    const found = [...checks.flatMap((check) => check(context, state)), ...hand.filter(({ operation }) => operation === state.operation.number)];
    // Like cuts of one operation find the same.
    const texts = found.map((finding) => JSON.stringify(finding));
    return found.filter((_, i) => texts.indexOf(texts[i]!) === i);
  });
}
