import type { Part } from '../part/part.js';
import { compareSolidHands, HAND_SEGMENTS, type HandComparison } from './hand.js';
import type { Kernel } from './kernel.js';
import type { Solid } from './model.js';
import { soundSolid } from './sound-solid.js';

const known = new WeakMap<Part, HandComparison>();

/**
 * How the hands of a part differ, found out once for each part, of which it is sure that it can be made.
 * @param right the right hand of the part.
 * @param made its solid, on coarse facets, where that was made already.
 * @throws UserError as soundSolid does.
 */
export function handsOfPart(kernel: Kernel, right: Part, made?: Solid): HandComparison {
  const comparison = known.get(right) ?? compareSolidHands(kernel, soundSolid(kernel, right, { segments: HAND_SEGMENTS }, made), right.handAxis);
  known.set(right, comparison);
  return comparison;
}
