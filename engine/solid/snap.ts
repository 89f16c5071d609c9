import type { Vector3 } from '../geometry/vector.js';
import type { SolidFace, Surface } from './model.js';
import { offsetFrom } from './surface.js';

/** Near enough to a surface, mm. */
const EXACT = 1e-10;

/**
 * Moves each vertex on to all the exact surfaces whose facets meet in it, in place. A boolean of facets leaves vertices on
 * chords, and rounds them to 32 bits. A vertex moves by the least way that reaches its surfaces, at most `limit` mm;
 * where no common point is that near (surfaces that graze each other), it is put on all but one of them. `met` lists the surfaces of
 * each vertex; `only` names the vertices to move, all if not given.
 */
export function snapVertices(
  positions: Float64Array,
  met: readonly (readonly number[])[],
  surfaces: readonly Surface[],
  limit: number,
  only?: ReadonlySet<number>,
): void {
  met.forEach((indices, vertex) => {
    if (indices.length === 0 || (only !== undefined && !only.has(vertex))) return;
    const start: Vector3 = [positions[3 * vertex] ?? 0, positions[3 * vertex + 1] ?? 0, positions[3 * vertex + 2] ?? 0];
    const own = indices.map((index) => surfaces[index]).filter((surface) => surface !== undefined);
    const snapped = commonPoint(own, start, limit) ?? nearlyCommonPoint(own, start, limit);
    if (snapped !== undefined) positions.set(snapped, 3 * vertex);
  });
}

/** For each vertex the surfaces of the facets that meet in it. */
export function surfacesAtVertices(
  count: number,
  triangles: Uint32Array,
  faceOfTriangle: Uint32Array,
  faces: readonly SolidFace[],
): number[][] {
  const met = Array.from({ length: count }, (): number[] => []);
  triangles.forEach((vertex, corner) => {
    const surface = faces[faceOfTriangle[Math.floor(corner / 3)] ?? 0]?.surface ?? 0;
    const list = met[vertex];
    if (list !== undefined && !list.includes(surface)) list.push(surface);
  });
  return met;
}

/** A point that lies on all surfaces but one, and nearest to that one. */
function nearlyCommonPoint(surfaces: readonly Surface[], start: Vector3, limit: number): Vector3 | undefined {
  let [best, least] = [undefined as Vector3 | undefined, Infinity];
  for (const left of surfaces) {
    const point = commonPoint(surfaces.filter((surface) => surface !== left), start, limit);
    const off = point === undefined ? Infinity : Math.abs(offsetFrom(left, point).distance);
    if (off < least) [best, least] = [point, off];
  }
  return best;
}

/**
 * A point that lies on all the surfaces, near `start`, by Newton's method with least movement. Undefined when none is found
 * within `limit` mm.
 */
export function commonPoint(surfaces: readonly Surface[], start: Vector3, limit: number): Vector3 | undefined {
  let point = start;
  for (let round = 0; round < 30; round += 1) {
    // Normal equations of the linearised distances; the small diagonal keeps unbound directions at rest.
    let xx = 0, xy = 0, xz = 0, yy = 0, yz = 0, zz = 0;
    let x = 0, y = 0, z = 0, worst = 0;
    for (const surface of surfaces) {
      const { distance, normal } = offsetFrom(surface, point);
      const a = normal[0];
      const b = normal[1];
      const c = normal[2];
      xx += a * a;
      xy += a * b;
      xz += a * c;
      yy += b * b;
      yz += b * c;
      zz += c * c;
      x -= a * distance;
      y -= b * distance;
      z -= c * distance;
      worst = Math.max(worst, Math.abs(distance));
    }
    if (worst <= EXACT) return point;
    const damp = 1e-11;
    const move = solveSymmetric(xx + damp, xy, xz, yy + damp, yz, zz + damp, x, y, z);
    point = [point[0] + move[0], point[1] + move[1], point[2] + move[2]];
    const gone = Math.hypot(point[0] - start[0], point[1] - start[1], point[2] - start[2]);
    if (!(gone <= limit)) return undefined;
  }
  const rest = Math.max(...surfaces.map((surface) => Math.abs(offsetFrom(surface, point).distance)));
  return rest <= 1e-6 ? point : undefined;
}

/** Solves a positive definite 3 by 3 system, given by its upper triangle in rows and its right side, by Cholesky's method. */
function solveSymmetric(
  xx: number, xy: number, xz: number, yy: number, yz: number, zz: number,
  p: number, q: number, r: number,
): Vector3 {
  const a = Math.sqrt(xx);
  const b = xy / a;
  const c = xz / a;
  const d = Math.sqrt(Math.max(yy - b * b, 1e-13));
  const e = (yz - b * c) / d;
  const f = Math.sqrt(Math.max(zz - c * c - e * e, 1e-13));
  const u = p / a;
  const v = (q - b * u) / d;
  const w = (r - c * u - e * v) / f;
  const z = w / f;
  const y = (v - e * z) / d;
  return [(u - b * y - c * z) / a, y, z];
}
