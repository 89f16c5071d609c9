import { dot, type Vector3 } from '../geometry/vector.js';
import { bezierAt } from './bezier.js';
import { rightOf } from './camera.js';
import type { Camera } from './model.js';
import { spanOf, type SpaceCurve } from './space-curve.js';

/** A curve of space as the camera sees it: x to the right, y up, d the depth; the same parameter t as in space. */
export type Shadow =
  | { readonly kind: 'line'; readonly point: Vector3; readonly direction: Vector3 }
  | { readonly kind: 'ellipse'; readonly centre: Vector3; readonly u: Vector3; readonly v: Vector3 }
  | { readonly kind: 'spline'; readonly points: readonly Vector3[] }
  | RoundShadow;

/** The shadow of a spline on a cylinder that is seen along its axis: a true circle, run through to and fro. */
export interface RoundShadow {
  readonly kind: 'round';
  readonly centre: readonly [number, number];
  readonly radius: number;
  readonly points: readonly Vector3[];
  /** The angle of each joint about the centre, radians, without jumps. */
  readonly angles: readonly number[];
}

/** Turns points and directions of space into (x, y, depth) of the camera. */
export type Turn = (p: Vector3) => Vector3;

export function turnOf(camera: Camera): Turn {
  const right = rightOf(camera);
  return (p) => [dot(p, right), dot(p, camera.up), dot(p, camera.toward)];
}

export function shadowOf(curve: SpaceCurve, turn: Turn): Exclude<Shadow, RoundShadow> {
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
    case 'round': {
      if (k < 2) {
        const angle = angleAt(shadow, t);
        return k === 0 ? shadow.centre[0] + shadow.radius * Math.cos(angle) : shadow.centre[1] + shadow.radius * Math.sin(angle);
      }
      const { points } = shadow;
      const { i, s } = spanOf(points.length, t);
      return bezierAt(points[3 * i]![k], points[3 * i + 1]![k], points[3 * i + 2]![k], points[3 * i + 3]![k], s);
    }
    case 'spline': {
      const { points } = shadow;
      const { i, s } = spanOf(points.length, t);
      return bezierAt(points[3 * i]![k], points[3 * i + 1]![k], points[3 * i + 2]![k], points[3 * i + 3]![k], s);
    }
  }
}

/** The shadow laid on the circle, which it follows within the spline's tolerance. */
export function roundShadow({ points }: Shadow & { kind: 'spline' }, centre: readonly [number, number], radius: number): RoundShadow {
  const angles: number[] = [];
  for (let i = 0; i < points.length; i += 3) {
    const angle = Math.atan2(points[i]![1] - centre[1], points[i]![0] - centre[0]);
    angles.push(angles.length === 0 ? angle : nearTo(angle, angles.at(-1)!));
  }
  return { kind: 'round', centre, radius, points, angles };
}

/** The angle about the centre at t, radians, without jumps. */
export function angleAt({ centre, points, angles }: RoundShadow, t: number): number {
  const { i, s } = spanOf(points.length, t);
  if (s === 0 || s === 1) return angles[i + s]!;
  const [x, y] = [0, 1].map((k) => bezierAt(points[3 * i]![k]!, points[3 * i + 1]![k]!, points[3 * i + 2]![k]!, points[3 * i + 3]![k]!, s));
  return nearTo(Math.atan2(y! - centre[1], x! - centre[0]), angles[i]!);
}

const nearTo = (angle: number, other: number): number => angle - 2 * Math.PI * Math.round((angle - other) / (2 * Math.PI));
