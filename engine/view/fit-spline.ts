import { add, cross, dot, length, scale, subtract, type Vector3 } from '../geometry/vector.js';
import { bezierAt } from './bezier.js';

/** A point of a curve and the direction, length one, in which it runs there. */
export interface Reading {
  readonly point: Vector3;
  readonly direction: Vector3;
}

/** Greatest distance of the spline from the curve, mm. */
const TOLERANCE = 2e-4;

const DEEPEST = 12;

/** Béziers end to end: 3n + 1 points, and the n + 1 parameters of the curve at their joints. */
export interface Fit {
  readonly points: Vector3[];
  readonly joints: number[];
}

/**
 * Cubic Béziers end to end along a curve that can be read at any parameter from `low` to `high`. Each stretch that
 * strays from the curve is halved.
 */
export function fitSpline(read: (t: number) => Reading, low: number, high: number): Fit {
  const fit: Fit = { points: [read(low).point], joints: [low] };
  // A quarter and less of a turn to a stretch, so that the direction of travel is never in doubt.
  for (let k = 0; k < 4; k += 1) {
    stretch(read, low + ((high - low) * k) / 4, low + ((high - low) * (k + 1)) / 4, 0, fit);
  }
  return fit;
}

function stretch(read: (t: number) => Reading, t0: number, t1: number, depth: number, fit: Fit): void {
  const [a, b] = [read(t0), read(t1)];
  const chord = subtract(b.point, a.point);
  const size = length(chord);
  // The handle that makes a Bézier follow a circular arc through the same turn.
  const turn = Math.atan2(length(cross(a.direction, b.direction)), dot(a.direction, b.direction));
  const handle = size / (3 * Math.cos(turn / 4) ** 2);
  const [p, q] = [add(a.point, scale(a.direction, handle)), subtract(b.point, scale(b.direction, handle))];
  const good = depth >= DEEPEST || size < 1e-6 || (turn < 1.2 && strays(read, t0, t1, [a.point, p, q, b.point]) <= TOLERANCE);
  if (good) {
    fit.points.push(p, q, b.point);
    fit.joints.push(t1);
    return;
  }
  const middle = (t0 + t1) / 2;
  stretch(read, t0, middle, depth + 1, fit);
  stretch(read, middle, t1, depth + 1, fit);
}

/** How far the Bézier lies from the curve at three places between its ends, mm. */
function strays(read: (t: number) => Reading, t0: number, t1: number, [a, b, c, d]: readonly [Vector3, Vector3, Vector3, Vector3]): number {
  const pace = length(subtract(d, a)) / (t1 - t0);
  let worst = 0;
  for (const s of [0.25, 0.5, 0.75]) {
    const place = [0, 1, 2].map((k) => bezierAt(a[k]!, b[k]!, c[k]!, d[k]!, s)) as unknown as Vector3;
    let t = t0 + (t1 - t0) * s;
    for (let round = 0; round < 4; round += 1) {
      const { point, direction } = read(t);
      t += dot(subtract(place, point), direction) / pace;
      t = Math.max(t0, Math.min(t1, t));
    }
    worst = Math.max(worst, length(subtract(read(t).point, place)));
  }
  return worst;
}
