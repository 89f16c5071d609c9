import type { Axis } from '../part/station.js';
import { reflection } from './matrix.js';
import type { Solid } from './model.js';
import { moveSolid } from './transform.js';

/** Of what a solid is the mirror image, and along which axis it is reversed, through the zero of that axis. */
export interface Reflection {
  readonly solid: Solid;
  readonly axis: Axis;
}

const sources = new WeakMap<Solid, Reflection>();
const images = new WeakMap<Solid, Map<Axis, Solid>>();

/**
 * The mirror image of a solid, made once. It is remembered of what it is the image, so that cuts and views of the one serve
 * for the other. The image of the image along the same axis is the solid itself.
 */
export function reflectSolid(solid: Solid, axis: Axis): Solid {
  const source = sources.get(solid);
  if (source?.axis === axis) return source.solid;
  const known = images.get(solid) ?? new Map<Axis, Solid>();
  images.set(solid, known);
  const found = known.get(axis);
  if (found !== undefined) return found;
  const image = moveSolid({ matrix: reflection(axis), shift: [0, 0, 0] }, solid);
  sources.set(image, { solid, axis });
  known.set(axis, image);
  return image;
}

/** Of what a solid is the mirror image; undefined for one that was not made so. */
export const reflectionOf = (solid: Solid): Reflection | undefined => sources.get(solid);
