import { cross, dot, scale, subtract, unit, type Vector2, type Vector3 } from './vector.js';

/**
 * A place and three directions at right angles, each of length one. `z` is `x` cross `y` in a right-handed frame;
 * mirroring a part makes left-handed frames, which every reader must accept.
 */
export interface Frame {
  readonly origin: Vector3;
  readonly x: Vector3;
  readonly y: Vector3;
  readonly z: Vector3;
}

/** A right-handed frame with the given z direction; `toward` gives the side on which its x direction lies. */
export function frameAlong(origin: Vector3, z: Vector3, toward: Vector3): Frame {
  const axis = unit(z);
  const x = unit(subtract(toward, scale(axis, dot(toward, axis))));
  return { origin, x, y: cross(axis, x), z: axis };
}

/** The point of space that stands at `point` = (x, y, z) counted in the frame. */
export const fromFrame = (frame: Frame, point: Vector3): Vector3 => placed(frame, point[0], point[1], point[2]);

/** Asked for very many points: written out, for it must make no vectors on its way. */
const placed = ({ origin, x, y, z }: Frame, a: number, b: number, c: number): Vector3 => [
  origin[0] + (x[0] * a + y[0] * b + z[0] * c),
  origin[1] + (x[1] * a + y[1] * b + z[1] * c),
  origin[2] + (x[2] * a + y[2] * b + z[2] * c),
];

/** The (x, y, z) of a point of space, counted in the frame. */
export function toFrame(frame: Frame, point: Vector3): Vector3 {
  const { origin, x, y, z } = frame;
  const a = point[0] - origin[0];
  const b = point[1] - origin[1];
  const c = point[2] - origin[2];
  return [a * x[0] + b * x[1] + c * x[2], a * y[0] + b * y[1] + c * y[2], a * z[0] + b * z[1] + c * z[2]];
}

/** The point of space above (x, y) of the frame's plane at the height `z`. */
export const onFrame = (frame: Frame, point: Vector2, z: number): Vector3 =>
  placed(frame, point[0], point[1], z);
