import { dot, subtract, length, type Vector3 } from '../geometry/vector.js';
import type { Surface } from '../solid/model.js';
import { offsetFrom } from '../solid/surface.js';

/**
 * The point near `start` that lies on all the given surfaces: damped Gauss-Newton, so that two surfaces give the nearest
 * point of their meeting curve, and surfaces that touch do not throw it far. Returns `start` itself when it would have to
 * move by more than `reach` mm.
 */
export function settle(start: Vector3, surfaces: readonly Surface[], reach: number): Vector3 {
  let p = start;
  for (let round = 0; round < 12; round += 1) {
    let xx = 1e-9, xy = 0, xz = 0, yy = 1e-9, yz = 0, zz = 1e-9;
    let bx = 0, by = 0, bz = 0;
    for (const surface of surfaces) {
      const { distance, normal } = offsetFrom(surface, p);
      const x = normal[0];
      const y = normal[1];
      const z = normal[2];
      xx += x * x; xy += x * y; xz += x * z; yy += y * y; yz += y * z; zz += z * z;
      bx += x * distance; by += y * distance; bz += z * distance;
    }
    const step = solveSymmetric(xx, xy, xz, yy, yz, zz, bx, by, bz);
    p = subtract(p, step);
    if (dot(step, step) < 1e-26) break;
  }
  const moved = length(subtract(p, start));
  return moved <= reach ? p : start;
}

/** Solves the symmetric 3 by 3 system by cofactors. */
function solveSymmetric(
  xx: number, xy: number, xz: number, yy: number, yz: number, zz: number,
  bx: number, by: number, bz: number,
): Vector3 {
  const a = yy * zz - yz * yz;
  const b = xz * yz - xy * zz;
  const c = xy * yz - xz * yy;
  const scale = 1 / (xx * a + xy * b + xz * c);
  const e = xx * zz - xz * xz;
  const f = xy * xz - xx * yz;
  const i = xx * yy - xy * xy;
  return [
    (a * bx + b * by + c * bz) * scale,
    (b * bx + e * by + f * bz) * scale,
    (c * bx + f * by + i * bz) * scale,
  ];
}
