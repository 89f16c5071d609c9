import type { Curve2 } from '../../geometry/curve.js';
import type { Vector2 } from '../../geometry/vector.js';

const degrees = Math.PI / 180;

/** The point of an arc or ellipse at an angle (the parameter of the ellipse), degrees. */
export function pointAtAngle(curve: Extract<Curve2, { kind: 'arc' | 'ellipse' }>, angle: number): Vector2 {
  const t = angle * degrees;
  if (curve.kind === 'arc') return [curve.centre[0] + curve.radius * Math.cos(t), curve.centre[1] + curve.radius * Math.sin(t)];
  const [x, y] = [curve.radiusX * Math.cos(t), curve.radiusY * Math.sin(t)];
  const [c, s] = [Math.cos(curve.rotation * degrees), Math.sin(curve.rotation * degrees)];
  return [curve.centre[0] + x * c - y * s, curve.centre[1] + x * s + y * c];
}

/** Points of a curve that include its ends and, within a hundredth of its size, its extremes. */
export function extremesOf(curve: Curve2): readonly Vector2[] {
  if (curve.kind === 'line') return [curve.from, curve.to];
  if (curve.kind === 'spline') return curve.points;
  const steps = Math.max(4, Math.ceil(Math.abs(curve.sweep) / 15));
  return Array.from({ length: steps + 1 }, (_, i) => pointAtAngle(curve, curve.start + (curve.sweep * i) / steps));
}

/** A curve as a chain of points, close enough for telling what overlaps what on paper. */
export function chainOf(curve: Curve2): readonly Vector2[] {
  if (curve.kind !== 'spline') return extremesOf(curve);
  const chain: Vector2[] = [];
  for (let i = 0; i + 3 < curve.points.length; i += 3) {
    const [a, b, c, d] = curve.points.slice(i, i + 4) as [Vector2, Vector2, Vector2, Vector2];
    for (let k = i === 0 ? 0 : 1; k <= 4; k += 1) {
      const t = k / 4;
      const s = 1 - t;
      const mix = (j: 0 | 1): number => s * s * s * a[j] + 3 * s * s * t * b[j] + 3 * s * t * t * c[j] + t * t * t * d[j];
      chain.push([mix(0), mix(1)]);
    }
  }
  return chain;
}
