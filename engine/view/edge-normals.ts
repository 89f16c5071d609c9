import { cross, dot, scale, type Vector3 } from '../geometry/vector.js';
import type { Solid } from '../solid/model.js';
import { offsetFrom } from '../solid/surface.js';
import { slopeAt, type SpaceCurve } from './space-curve.js';

/** True where the body bulges at an edge with the outward normals a to the left and b to the right of its way. */
export const isConvex = (a: Vector3, b: Vector3, curve: SpaceCurve, t: number): boolean =>
  dot(b, cross(a, slopeAt(curve, t))) < 0;

/** The outward normal of a sheet at a point of it. */
export function outward(solid: Solid, sheet: number, p: Vector3): Vector3 {
  const { normal } = offsetFrom(solid.surfaces[sheet >> 1]!, p);
  return sheet & 1 ? scale(normal, -1) : normal;
}
