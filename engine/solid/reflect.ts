import type { Axis } from '../part/station.js';
import { reflection } from './matrix.js';
import type { Solid } from './model.js';
import { moveSolid } from './transform.js';

const images = new WeakMap<Solid, Map<Axis, Solid>>();

/**
 * The mirror image of a solid, made once. It says of what it is the image, so that cuts and views of the one serve for the
 * other. The image of the image along the same axis is the solid itself.
 */
export function reflectSolid(solid: Solid, axis: Axis): Solid {
  if (solid.imageOf?.axis === axis) return solid.imageOf.solid;
  const known = images.get(solid) ?? new Map<Axis, Solid>();
  images.set(solid, known);
  const image = known.get(axis) ?? { ...moveSolid({ matrix: reflection(axis), shift: [0, 0, 0] }, solid), imageOf: { solid, axis } };
  known.set(axis, image);
  return image;
}
