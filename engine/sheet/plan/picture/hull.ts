import { cross2, subtract2, type Vector2 } from '../../../geometry/vector.js';
import type { PaperBox } from '../../frame-box.js';
import { segmentMeetsBox } from '../../place/plane.js';

/** The convex outline round some points, counter-clockwise (Andrew's chains). */
export function hullOf(points: readonly Vector2[]): readonly Vector2[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (list: readonly Vector2[]): Vector2[] => {
    const kept: Vector2[] = [];
    for (const point of list) {
      while (kept.length > 1 && cross2(subtract2(kept[kept.length - 1]!, kept[kept.length - 2]!), subtract2(point, kept[kept.length - 1]!)) <= 0) kept.pop();
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...chain(sorted), ...chain([...sorted].reverse())];
}

/** True where a point lies inside a convex outline. */
export const insideHull = (hull: readonly Vector2[], point: Vector2): boolean =>
  hull.every((corner, i) => cross2(subtract2(hull[(i + 1) % hull.length]!, corner), subtract2(point, corner)) > 0);

/** True where a box and a convex outline share any room. */
export const hullMeetsBox = (hull: readonly Vector2[], box: PaperBox): boolean =>
  insideHull(hull, [box.left, box.bottom]) || hull.some((corner, i) => segmentMeetsBox(corner, hull[(i + 1) % hull.length]!, box));
