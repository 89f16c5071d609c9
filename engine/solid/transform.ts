import { add, length, subtract, type Vector3 } from '../geometry/vector.js';
import { apply, determinant, type Matrix3 } from './matrix.js';
import type { Solid, Surface } from './model.js';

/** A map of space that keeps lengths: first `matrix`, then `shift`. It may turn a right hand into a left one. */
export interface Motion {
  readonly matrix: Matrix3;
  readonly shift: Vector3;
}

export const movePoint = (motion: Motion, point: Vector3): Vector3 => add(apply(motion.matrix, point), motion.shift);

/** A surface moved or mirrored. */
export function moveSurface(motion: Motion, surface: Surface): Surface {
  const point = (p: Vector3): Vector3 => movePoint(motion, p);
  const direction = (v: Vector3): Vector3 => apply(motion.matrix, v);
  switch (surface.kind) {
    case 'plane':
      return { ...surface, point: point(surface.point), normal: direction(surface.normal) };
    case 'cylinder':
      return { ...surface, origin: point(surface.origin), axis: direction(surface.axis) };
    case 'cone':
      return { ...surface, apex: point(surface.apex), axis: direction(surface.axis) };
    case 'torus':
      return { ...surface, centre: point(surface.centre), axis: direction(surface.axis) };
    case 'sphere':
      return { ...surface, centre: point(surface.centre) };
  }
}

/** A solid moved or mirrored; its facets keep their tags and stay counter-clockwise seen from outside. */
export function moveSolid(motion: Motion, solid: Solid): Solid {
  const { matrix, shift } = motion;
  const positions = new Float64Array(solid.positions.length);
  for (let i = 0; i < positions.length; i += 3) {
    const x = solid.positions[i]!;
    const y = solid.positions[i + 1]!;
    const z = solid.positions[i + 2]!;
    for (let k = 0; k < 3; k += 1) {
      const row = matrix[k]!;
      positions[i + k] = row[0] * x + row[1] * y + row[2] * z + shift[k]!;
    }
  }
  const triangles = solid.triangles.slice();
  if (determinant(motion.matrix) < 0) {
    for (let i = 0; i < triangles.length; i += 3) {
      const second = triangles[i + 1] ?? 0;
      triangles[i + 1] = triangles[i + 2] ?? 0;
      triangles[i + 2] = second;
    }
  }
  const { faceOfTriangle, faces, facetError } = solid;
  return { positions, triangles, faceOfTriangle, faces, surfaces: solid.surfaces.map((surface) => moveSurface(motion, surface)), facetError };
}

/** True when the motion done twice leaves all points where they were, within a millionth of a millimetre or so. */
export function isItsOwnInverse(motion: Motion): boolean {
  const probes: Vector3[] = [[0, 0, 0], [1, 0, 0], [0, 1, 0], [0, 0, 1]];
  return probes.every((probe) => length(subtract(movePoint(motion, movePoint(motion, probe)), probe)) < 1e-6);
}
