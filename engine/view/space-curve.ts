import { add, cross, dot, length, scale, subtract, type Vector3 } from '../geometry/vector.js';
import { bezierAt, bezierSlope } from './bezier.js';

/**
 * An exact curve of space with its own parameter t: a line (t counts mm along `direction` from `point`), an ellipse
 * (centre + u cos t + v sin t, t in radians, u square to v; a circle where they are of one length), or cubic Béziers end
 * to end (3n + 1 points, t from 0 to n).
 */
export type SpaceCurve =
  | { readonly kind: 'line'; readonly point: Vector3; readonly direction: Vector3 }
  | { readonly kind: 'ellipse'; readonly centre: Vector3; readonly u: Vector3; readonly v: Vector3 }
  | { readonly kind: 'spline'; readonly points: readonly Vector3[] };

export function pointAt(curve: SpaceCurve, t: number): Vector3 {
  switch (curve.kind) {
    case 'line':
      return add(curve.point, scale(curve.direction, t));
    case 'ellipse':
      return add(curve.centre, add(scale(curve.u, Math.cos(t)), scale(curve.v, Math.sin(t))));
    case 'spline': {
      const { i, s } = spanOf(curve.points.length, t);
      const [a, b, c, d] = curve.points.slice(3 * i, 3 * i + 4) as unknown as readonly [Vector3, Vector3, Vector3, Vector3];
      return [0, 1, 2].map((k) => bezierAt(a[k]!, b[k]!, c[k]!, d[k]!, s)) as unknown as Vector3;
    }
  }
}

/** The direction in which the curve runs at t; not of length one. */
export function slopeAt(curve: SpaceCurve, t: number): Vector3 {
  switch (curve.kind) {
    case 'line':
      return curve.direction;
    case 'ellipse':
      return subtract(scale(curve.v, Math.cos(t)), scale(curve.u, Math.sin(t)));
    case 'spline': {
      const { i, s } = spanOf(curve.points.length, t);
      const [a, b, c, d] = curve.points.slice(3 * i, 3 * i + 4) as unknown as readonly [Vector3, Vector3, Vector3, Vector3];
      return [0, 1, 2].map((k) => bezierSlope(a[k]!, b[k]!, c[k]!, d[k]!, s)) as unknown as Vector3;
    }
  }
}

/** The parameter of the point of a line or an ellipse that lies (about) nearest to `p`; an angle comes from -pi to pi. */
export function parameterOf(curve: SpaceCurve & { kind: 'line' | 'ellipse' }, p: Vector3): number {
  if (curve.kind === 'line') return dot(subtract(p, curve.point), curve.direction);
  const offset = subtract(p, curve.centre);
  return Math.atan2(dot(offset, curve.v) / dot(curve.v, curve.v), dot(offset, curve.u) / dot(curve.u, curve.u));
}

/** A circle about an axis, from any direction that is not along it. */
export function circleAbout(centre: Vector3, axis: Vector3, radius: number): SpaceCurve & { kind: 'ellipse' } {
  const u = across(axis);
  return { kind: 'ellipse', centre, u: scale(u, radius), v: scale(cross(axis, u), radius) };
}

/** Some direction of length one square to the given one; along an axis of space where that can be. */
export function across(axis: Vector3): Vector3 {
  const [x, y, z] = axis.map(Math.abs) as [number, number, number];
  const other: Vector3 = x <= y && x <= z ? [1, 0, 0] : y <= z ? [0, 1, 0] : [0, 0, 1];
  const rest = subtract(other, scale(axis, dot(axis, other)));
  return scale(rest, 1 / length(rest));
}

/** The Bézier of a chain of `count` points at which t lies, and the place in it, 0 to 1; beyond the end a closed chain begins anew. */
export function spanOf(count: number, given: number): { i: number; s: number } {
  const last = (count - 1) / 3 - 1;
  const t = given > last + 1 + 1e-9 ? given - last - 1 : given;
  const i = Math.max(0, Math.min(last, Math.floor(t)));
  return { i, s: t - i };
}
