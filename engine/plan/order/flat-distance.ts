import type { Vector3 } from '../../geometry/vector.js';

/** What of a triangle lies above a height: no corner, or a convex polygon. */
export function above(corners: readonly Vector3[], height: number): readonly Vector3[] {
  const left: Vector3[] = [];
  corners.forEach((from, i) => {
    const to = corners[(i + 1) % corners.length]!;
    if (from[2] >= height) left.push(from);
    if (from[2] >= height !== to[2] >= height) {
      const share = (height - from[2]) / (to[2] - from[2]);
      left.push([from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]), height]);
    }
  });
  return left;
}

/** Where a polygon comes nearest to a stretch, both seen from above. */
export interface Nearest {
  readonly distance: number;
  /** On the polygon. */
  readonly at: Vector3;
}

/** Between the stretch a b and the sides of a polygon, seen from above; the polygon's inside does not count. */
export function nearestFromAbove(a: Vector3, b: Vector3, polygon: readonly Vector3[]): Nearest {
  let best: Nearest = { distance: Infinity, at: a };
  const offer = (distance: number, at: Vector3): void => {
    if (distance < best.distance) best = { distance, at };
  };
  polygon.forEach((from, i) => {
    const to = polygon[(i + 1) % polygon.length]!;
    if (crossing(a, b, from, to)) return offer(0, from);
    offer(...toStretch(from, a, b, from));
    for (const end of [a, b]) {
      const share = shareAlong(end, from, to);
      const at: Vector3 = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]), from[2] + share * (to[2] - from[2])];
      offer(Math.hypot(end[0] - at[0], end[1] - at[1]), at);
    }
  });
  return best;
}

function toStretch(point: Vector3, a: Vector3, b: Vector3, at: Vector3): readonly [number, Vector3] {
  const share = shareAlong(point, a, b);
  return [Math.hypot(point[0] - a[0] - share * (b[0] - a[0]), point[1] - a[1] - share * (b[1] - a[1])), at];
}

function shareAlong(point: Vector3, from: Vector3, to: Vector3): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return Math.min(1, Math.max(0, ((point[0] - from[0]) * dx + (point[1] - from[1]) * dy) / (dx * dx + dy * dy || 1)));
}

const side = (a: Vector3, b: Vector3, p: Vector3): number => (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);

const crossing = (a: Vector3, b: Vector3, c: Vector3, d: Vector3): boolean => side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
