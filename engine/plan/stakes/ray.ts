import { add, cross, dot, length, scale, subtract, type Vector3 } from '../../geometry/vector.js';
import type { Solid } from '../../solid/model.js';

/** Where a ray meets a facet. */
export interface Hit {
  readonly distance: number;
  readonly triangle: number;
  /** Of the facet, out of the material, length one. */
  readonly normal: Vector3;
}

const corner = ({ positions }: Solid, vertex: number): Vector3 => [positions[3 * vertex] ?? 0, positions[3 * vertex + 1] ?? 0, positions[3 * vertex + 2] ?? 0];

export const cornersOf = (solid: Solid, triangle: number): readonly [Vector3, Vector3, Vector3] => [0, 1, 2].map((k) => corner(solid, solid.triangles[3 * triangle + k] ?? 0)) as unknown as readonly [Vector3, Vector3, Vector3];

/** Normal of a facet, out of the material; of length nought where it has no area. */
export function normalOf(solid: Solid, triangle: number): Vector3 {
  const [a, b, c] = cornersOf(solid, triangle);
  const normal = cross(subtract(b, a), subtract(c, a));
  const size = length(normal);
  return size < 1e-15 ? [0, 0, 0] : scale(normal, 1 / size);
}

/** All facets that a ray meets beyond `from`, nearest first. A ray through an edge that two facets share meets both. */
export function hitsAlong(solid: Solid, origin: Vector3, direction: Vector3, from = 1e-6): readonly Hit[] {
  const found: Hit[] = [];
  for (let triangle = 0; triangle < solid.faceOfTriangle.length; triangle += 1) {
    const [a, b, c] = cornersOf(solid, triangle);
    const [ab, ac] = [subtract(b, a), subtract(c, a)];
    const p = cross(direction, ac);
    const determinant = dot(ab, p);
    if (Math.abs(determinant) < 1e-14) continue;
    const t = subtract(origin, a);
    const u = dot(t, p) / determinant;
    if (u < -1e-9 || u > 1 + 1e-9) continue;
    const q = cross(t, ab);
    const v = dot(direction, q) / determinant;
    if (v < -1e-9 || u + v > 1 + 1e-9) continue;
    const distance = dot(ac, q) / determinant;
    if (distance > from) found.push({ distance, triangle, normal: normalOf(solid, triangle) });
  }
  return found.sort((x, y) => x.distance - y.distance);
}

/** The middle of a facet. */
export const middleOf = (solid: Solid, triangle: number): Vector3 => {
  const [a, b, c] = cornersOf(solid, triangle);
  return scale(add(add(a, b), c), 1 / 3);
};
