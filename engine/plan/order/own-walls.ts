import type { Cut } from '../../part/cut.js';
import { cornersOf, type Placed } from './placed.js';

/** How high the steep walls stand that a cut leaves, mm along the cutter; 0 where it leaves none. */
export function ownWallHeight(placed: Placed, { id }: Cut): number {
  const { faces, faceOfTriangle } = placed.solid;
  let [low, high] = [Infinity, -Infinity];
  faceOfTriangle.forEach((face, triangle) => {
    if (faces[face]!.tag.cut !== id || Math.abs(placed.normals[triangle]![2]) > 0.2) return;
    for (const [, , z] of cornersOf(placed, triangle)) {
      low = Math.min(low, z);
      high = Math.max(high, z);
    }
  });
  return Math.max(0, high - low);
}
