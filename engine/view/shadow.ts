import { dot, type Vector3 } from '../geometry/vector.js';
import { bezierAt } from './bezier.js';
import { rightOf } from './camera.js';
import type { Camera } from './model.js';
import { spanOf, type SpaceCurve } from './space-curve.js';

/** A curve of space as the camera sees it: x to the right, y up, d the depth; the same parameter t as in space. */
export type Shadow =
  | { readonly kind: 'line'; readonly point: Vector3; readonly direction: Vector3 }
  | { readonly kind: 'ellipse'; readonly centre: Vector3; readonly u: Vector3; readonly v: Vector3 }
  | { readonly kind: 'spline'; readonly points: readonly Vector3[] };

/** Turns points and directions of space into (x, y, depth) of the camera. */
export type Turn = (p: Vector3) => Vector3;

export function turnOf(camera: Camera): Turn {
  const right = rightOf(camera);
  return (p) => [dot(p, right), dot(p, camera.up), dot(p, camera.toward)];
}

export function shadowOf(curve: SpaceCurve, turn: Turn): Shadow {
  switch (curve.kind) {
    case 'line':
      return { kind: 'line', point: turn(curve.point), direction: turn(curve.direction) };
    case 'ellipse':
      return { kind: 'ellipse', centre: turn(curve.centre), u: turn(curve.u), v: turn(curve.v) };
    case 'spline':
      return { kind: 'spline', points: curve.points.map(turn) };
  }
}

/** One coordinate (0 x, 1 y, 2 depth) of the shadow at t. */
export function coordinateAt(shadow: Shadow, t: number, k: 0 | 1 | 2): number {
  switch (shadow.kind) {
    case 'line':
      return shadow.point[k] + shadow.direction[k] * t;
    case 'ellipse':
      return shadow.centre[k] + shadow.u[k] * Math.cos(t) + shadow.v[k] * Math.sin(t);
    case 'spline': {
      const { points } = shadow;
      const { i, s } = spanOf(points.length, t);
      return bezierAt(points[3 * i]![k], points[3 * i + 1]![k], points[3 * i + 2]![k], points[3 * i + 3]![k], s);
    }
  }
}
