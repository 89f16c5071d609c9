import { add, scale, type Vector3 } from '../geometry/vector.js';
import type { Solid } from './model.js';

/** The volume that the facets enclose, mm3; off from the exact volume by at most the area times the facet error. */
export function volumeOf(solid: Solid): number {
  const { positions: p, triangles: t } = solid;
  // Counted from a vertex of the body, so that a body far from the origin loses no digits.
  const [ox, oy, oz] = [p[0] ?? 0, p[1] ?? 0, p[2] ?? 0];
  let six = 0;
  for (let i = 0; i < t.length; i += 3) {
    const a = 3 * (t[i] as number);
    const b = 3 * (t[i + 1] as number);
    const c = 3 * (t[i + 2] as number);
    const ax = (p[a] as number) - ox;
    const ay = (p[a + 1] as number) - oy;
    const az = (p[a + 2] as number) - oz;
    const bx = (p[b] as number) - ox;
    const by = (p[b + 1] as number) - oy;
    const bz = (p[b + 2] as number) - oz;
    const cx = (p[c] as number) - ox;
    const cy = (p[c + 1] as number) - oy;
    const cz = (p[c + 2] as number) - oz;
    six += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
  return six / 6;
}

/** Area of the facets of each face, mm2. */
export function faceAreas(solid: Solid): number[] {
  const areas = solid.faces.map(() => 0);
  const { positions: p, triangles: t } = solid;
  solid.faceOfTriangle.forEach((face, triangle) => {
    const a = 3 * (t[3 * triangle] ?? 0);
    const b = 3 * (t[3 * triangle + 1] ?? 0);
    const c = 3 * (t[3 * triangle + 2] ?? 0);
    const ux = p[b]! - p[a]!;
    const uy = p[b + 1]! - p[a + 1]!;
    const uz = p[b + 2]! - p[a + 2]!;
    const vx = p[c]! - p[a]!;
    const vy = p[c + 1]! - p[a + 1]!;
    const vz = p[c + 2]! - p[a + 2]!;
    const x = uy * vz - uz * vy;
    const y = uz * vx - ux * vz;
    const z = ux * vy - uy * vx;
    areas[face] = (areas[face] ?? 0) + Math.sqrt(x * x + y * y + z * z) / 2;
  });
  return areas;
}

/** Area of the facets of the face with the given index, mm2; 0 when there is none. */
export const areaOfFace = (solid: Solid, face: number): number => faceAreas(solid)[face] ?? 0;

/** Centre and second moments of a solid of even density. */
export interface MassProperties {
  readonly volume: number;
  readonly centroid: Vector3;
  /** Rows of the integral of r r-transposed about the centroid, mm5; its axes are those of the inertia. */
  readonly moments: readonly [Vector3, Vector3, Vector3];
}

/** Volume, centroid and second moments of what the facets enclose, as a sum over tetrahedra from one vertex. */
export function massProperties(solid: Solid): MassProperties {
  const { positions: p, triangles: t } = solid;
  const start: Vector3 = [p[0] ?? 0, p[1] ?? 0, p[2] ?? 0];
  let volume = 0;
  const first: [number, number, number] = [0, 0, 0];
  const second = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  const corners = new Float64Array(9);
  const sum = new Float64Array(3);
  for (let i = 0; i < t.length; i += 3) {
    for (let k = 0; k < 9; k += 1) corners[k] = p[3 * t[i + Math.trunc(k / 3)]! + (k % 3)]! - start[k % 3]!;
    const [ax, ay, az, bx, by, bz, cx, cy, cz] = corners as unknown as readonly [number, number, number, number, number, number, number, number, number];
    const part = (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6;
    volume += part;
    for (let k = 0; k < 3; k += 1) {
      sum[k] = corners[k]! + corners[k + 3]! + corners[k + 6]!;
      first[k]! += sum[k]! * (part / 4);
    }
    // Integral of x y over a tetrahedron with a corner at 0: V / 20 (sum of x_i y_i + sum of x_i times sum of y_i).
    for (let r = 0; r < 3; r += 1) {
      for (let c = 0; c < 3; c += 1) {
        const products = corners[r]! * corners[c]! + corners[r + 3]! * corners[c + 3]! + corners[r + 6]! * corners[c + 6]!;
        second[3 * r + c]! += (part / 20) * (products + sum[r]! * sum[c]!);
      }
    }
  }
  const middle = volume === 0 ? first : scale(first, 1 / volume);
  const row = (r: 0 | 1 | 2): Vector3 => {
    const entry = (c: 0 | 1 | 2): number => (second[3 * r + c] ?? 0) - volume * middle[r] * middle[c];
    return [entry(0), entry(1), entry(2)];
  };
  return { volume, centroid: add(start, middle), moments: [row(0), row(1), row(2)] };
}
