import { add, cross, dot, scale, subtract, unit, type Vector2, type Vector3 } from './vector.js';

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
export const fromFrame = (frame: Frame, point: Vector3): Vector3 =>
  add(frame.origin, add(add(scale(frame.x, point[0]), scale(frame.y, point[1])), scale(frame.z, point[2])));

/** The (x, y, z) of a point of space, counted in the frame. */
export function toFrame(frame: Frame, point: Vector3): Vector3 {
  const offset = subtract(point, frame.origin);
  return [dot(offset, frame.x), dot(offset, frame.y), dot(offset, frame.z)];
}

/** The point of space above (x, y) of the frame's plane at the height `z`. */
export const onFrame = (frame: Frame, point: Vector2, z: number): Vector3 =>
  fromFrame(frame, [point[0], point[1], z]);
