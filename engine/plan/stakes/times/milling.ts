import { feedRange } from '../../../trade/cutting.js';
import { cutMinutes } from '../../../trade/cut-minutes.js';
import { handlingMinutes, slitting } from '../../data/handling.js';
import { millingWidth, overrun, passDepths, turnsUnknown } from '../../data/passes.js';
import type { CutterPlan } from '../../speeds.js';
import { newFacesReach } from '../extents.js';
import type { OperationFacts } from '../facts.js';
import { softness } from './turning.js';

/** Finishing passes after roughing: the floor, and each wall where metal was left for that. */
const finishing = 2;

/** How an end mill goes through the metal: width and depth of a pass, and the passes that clear what is removed. */
export function millingPasses(facts: OperationFacts, cutter: CutterPlan): { readonly diameter: number; readonly width: number; readonly depth: number; readonly length: number; readonly passes: number } {
  const diameter = cutter.diameter ?? 6;
  const slotted = (cutter.endMill?.room ?? Infinity) < 1.6 * diameter;
  const width = slotted ? diameter : millingWidth * diameter;
  const soft = softness(facts);
  const depth = soft * (slotted ? Math.min(passDepths.slottingMost, passDepths.slotting * diameter) : Math.min(passDepths.sideMillingMost, passDepths.sideMilling * diameter));
  const { x, y } = newFacesReach(facts);
  const length = Math.max(x, y, diameter);
  return { diameter, width, depth, length, passes: Math.max(1, Math.ceil(facts.removed / (width * depth * length) - 1e-9)) };
}

/** Milling: what is removed / (width x depth x length) passes at the feed of the plan, and finishing passes. */
export function millingMinutes(facts: OperationFacts, cutter: CutterPlan): number {
  const { diameter, length, passes } = millingPasses(facts, cutter);
  const feed = feedRange('milling', diameter)[0] * (cutter.endMill?.cutter.teeth ?? 2);
  const all = passes + finishing;
  return cutMinutes({ length, overrun: diameter + overrun, feed, turns: cutter.speed ?? turnsUnknown, passes: all }) + all * handlingMinutes.passOnMill;
}

/** Slitting: once through at full depth, fed by hand. */
export function slittingMinutes(facts: OperationFacts): number {
  const { x, y, z } = newFacesReach(facts);
  return (Math.max(x, y, z) + overrun) / slitting + handlingMinutes.passOnMill;
}
