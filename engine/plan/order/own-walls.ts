import type { Cut } from '../../part/cut.js';
import { cornersOf, normalOf, type Placed } from './placed.js';

/** How high the steep walls stand that a cut leaves, mm along the cutter; 0 where it leaves none. */
export function ownWallHeight(placed: Placed, { id }: Cut): number {
  const { faces } = placed.solid;
  let [low, high] = [Infinity, -Infinity];
  for (const triangle of placed.members.flatMap((members, face) => (faces[face]!.tag.cut === id ? members : []))) {
    const corners = cornersOf(placed, triangle);
    if (Math.abs(normalOf(placed, corners)[2]) > 0.2) continue;
    for (const [, , z] of corners) {
      low = Math.min(low, z);
      high = Math.max(high, z);
    }
  }
  return Math.max(0, high - low);
}
