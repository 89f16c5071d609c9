import type { Curve2 } from '../geometry/curve.js';
import type { Vector2 } from '../geometry/vector.js';
import { bezierAt } from './bezier.js';

/** Lower left and upper right corner. */
export interface Box {
  readonly low: Vector2;
  readonly high: Vector2;
}

/** The least box about all the curves; of nothing, a point at the origin. */
export function boundsOf(curves: readonly Curve2[]): Box {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  const take = (x: number, y: number): void => {
    left = Math.min(left, x);
    low = Math.min(low, y);
    right = Math.max(right, x);
    high = Math.max(high, y);
  };
  for (const curve of curves) for (const [x, y] of extremesOf(curve)) take(x, y);
  return left > right ? { low: [0, 0], high: [0, 0] } : { low: [left, low], high: [right, high] };
}

/** Ends of a curve and the points at which it turns back in x or y. */
function extremesOf(curve: Curve2): readonly Vector2[] {
  switch (curve.kind) {
    case 'line':
      return [curve.from, curve.to];
    case 'arc':
      return roundExtremes(curve.centre, curve.radius, curve.radius, 0, curve.start, curve.sweep);
    case 'ellipse':
      return roundExtremes(curve.centre, curve.radiusX, curve.radiusY, curve.rotation, curve.start, curve.sweep);
    case 'spline':
      return splineExtremes(curve.points);
  }
}

function roundExtremes(centre: Vector2, rx: number, ry: number, rotation: number, start: number, sweep: number): Vector2[] {
  const turn = (rotation * Math.PI) / 180;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const at = (degrees: number): Vector2 => {
    const t = (degrees * Math.PI) / 180;
    const [x, y] = [rx * Math.cos(t), ry * Math.sin(t)];
    return [centre[0] + x * c - y * s, centre[1] + x * s + y * c];
  };
  const [from, to] = sweep < 0 ? [start + sweep, start] : [start, start + sweep];
  const stops = [start, start + sweep];
  for (const extreme of [Math.atan2(-ry * s, rx * c), Math.atan2(ry * c, rx * s)]) {
    const degrees = (extreme * 180) / Math.PI;
    for (let t = degrees + 180 * Math.ceil((from - degrees) / 180); t <= to; t += 180) stops.push(t);
  }
  return stops.map(at);
}

/** Joints of the Béziers and the places where one turns back in x or y. */
function splineExtremes(points: readonly Vector2[]): Vector2[] {
  const result: Vector2[] = [];
  for (let i = 0; i + 3 < points.length; i += 3) {
    const hull = points.slice(i, i + 4);
    const [xs, ys] = [0, 1].map((k) => hull.map((p) => p[k]!)) as [number[], number[]];
    const stops = [0, 1, ...turningsOf(xs), ...turningsOf(ys)];
    result.push(...stops.map((t): Vector2 => [at(xs, t), at(ys, t)]));
  }
  return result;
}

const at = ([a, b, c, d]: readonly number[], t: number): number => bezierAt(a!, b!, c!, d!, t);

/** Where between 0 and 1 the slope of a cubic Bézier is zero. */
function turningsOf([a, b, c, d]: readonly number[]): number[] {
  const [p, q, r] = [b! - a!, c! - b!, d! - c!];
  const [square, half] = [p - 2 * q + r, q - p];
  const gap = half * half - square * p;
  if (gap < 0) return [];
  const root = Math.sqrt(gap);
  // The stable form of the solution of square t t + 2 half t + p = 0.
  const sum = -(half + (half < 0 ? -root : root));
  return [sum / square, p / sum].filter((t) => t > 0 && t < 1);
}
