import { cross, dot, scale, subtract, unit, type Vector2, type Vector3 } from '../geometry/vector.js';
import type { Direction } from '../part/station.js';
import type { Camera } from './model.js';

/** The direction of space that runs to the right in the view. */
export const rightOf = (camera: Camera): Vector3 => cross(camera.toward, camera.up);

/** Where a point of space stands in the view, mm: x to the right, y up. */
export const projectPoint = (camera: Camera, p: Vector3): Vector2 => [dot(p, rightOf(camera)), dot(p, camera.up)];

/** How far a point lies along the line of sight, mm; greater is farther from the eye. */
export const depthOf = (camera: Camera, p: Vector3): number => dot(p, camera.toward);

const EYES: Readonly<Record<Direction, Vector3>> = {
  '+x': [1, 0, 0],
  '-x': [-1, 0, 0],
  '+y': [0, 1, 0],
  '-y': [0, -1, 0],
  '+z': [0, 0, 1],
  '-z': [0, 0, -1],
};

/**
 * The camera whose eye stands on the given side: from '+z' one looks down on the part. `up` is the direction that runs
 * up the sheet; unless given, +z, and +y for the views from above and below.
 * Throws RangeError when `up` lies along the line of sight.
 */
export function standardCamera(from: Direction, up?: Direction): Camera {
  const eye = EYES[from];
  const upward = EYES[up ?? (from.endsWith('z') ? '+y' : '+z')];
  if (dot(eye, upward) !== 0) throw new RangeError(`a view from ${from} cannot have ${up ?? ''} upward`);
  return { toward: scale(eye, -1), up: upward };
}

/** The camera whose eye stands in the direction `eye` of the part, +z (or `up`) as upright as may be. Throws RangeError when they agree. */
export function cameraFrom(eye: Vector3, up: Vector3 = [0, 0, 1]): Camera {
  const toward = scale(unit(eye), -1);
  return { toward, up: unit(subtract(up, scale(toward, dot(up, toward)))) };
}

/** The camera of an isometric picture: the eye stands over a corner; by default right of, before and above the part. */
export const isometricCamera = (corner: Vector3 = [1, -1, 1], up: Vector3 = [0, 0, 1]): Camera => cameraFrom(corner, up);
