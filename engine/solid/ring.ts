import { arcPoints, arcRadius, arcSweep } from './grid.js';
import type { Outline } from '../geometry/outline.js';
import { cross2, type Vector2 } from '../geometry/vector.js';

/** An outline as a ring of points; piece i runs from point i to the next and belongs to segment `owners[i]`. */
export interface Ring {
  readonly points: readonly Vector2[];
  readonly owners: readonly number[];
  /** Greatest distance of a chord from its arc, for each segment, mm. */
  readonly sags: readonly number[];
}

/** The ring of an outline; arcs take the grid of their circle, counted from the direction `zero`. */
export function outlineRing(outline: Outline, zero: Vector2, segments: number): Ring {
  const points: Vector2[] = [];
  const owners: number[] = [];
  const sags = outline.map((segment, index) => {
    const { points: own, sag } =
      segment.kind === 'line' ? { points: [segment.from], sag: 0 } : arcPoints(segment, zero, segments);
    for (const point of own) {
      points.push(point);
      owners.push(index);
    }
    return sag;
  });
  return { points, owners, sags };
}

/** Throws RangeError unless the outline is closed and runs counter-clockwise, and each arc has a radius and its ends on its circle. */
export function checkOutline(outline: Outline): void {
  let area = 0;
  outline.forEach((segment, i) => {
    const next = outline[(i + 1) % outline.length] ?? segment;
    const gap = Math.max(Math.abs(next.from[0] - segment.to[0]), Math.abs(next.from[1] - segment.to[1]));
    if (!(gap <= 1e-6)) throw new RangeError(`the outline is open between "${segment.face}" and "${next.face}"`);
    area += cross2(segment.from, segment.to);
    if (segment.kind === 'line') return;
    const radius = arcRadius(segment);
    if (!(radius > 1e-6)) throw new RangeError(`the arc "${segment.face}" has no radius`);
    const end = Math.hypot(segment.to[0] - segment.centre[0], segment.to[1] - segment.centre[1]);
    if (!(Math.abs(radius - end) <= 1e-6)) throw new RangeError(`the arc "${segment.face}" does not end on its circle`);
    const sweep = arcSweep(segment);
    area += radius * radius * (sweep - Math.sin(sweep));
  });
  if (!(area > 0)) {
    throw new RangeError(`the outline with "${outline[0]?.face ?? ''}" encloses nothing or runs clockwise`);
  }
}
