import { type Vector3 } from '../../geometry/vector.js';
import type { Solid } from '../../solid/model.js';

/** Where a ray meets a facet. */
export interface Hit {
  readonly distance: number;
  readonly triangle: number;
  /** Of the facet, out of the material, length one. */
  readonly normal: Vector3;
}

/** The facets of a solid as flat numbers: a corner, two sides and the normal of each. */
interface Facets {
  readonly sides: Float64Array;
  readonly normals: Float64Array;
}

/** Facets are read off once a solid. */
const known = new WeakMap<Solid, Facets>();

function facetsOf(solid: Solid): Facets {
  const before = known.get(solid);
  if (before !== undefined) return before;
  const { positions: p, triangles: t } = solid;
  const count = t.length / 3;
  const sides = new Float64Array(9 * count);
  const normals = new Float64Array(3 * count);
  for (let i = 0; i < count; i += 1) {
    const [a, b, c] = [3 * t[3 * i]!, 3 * t[3 * i + 1]!, 3 * t[3 * i + 2]!];
    for (let k = 0; k < 3; k += 1) {
      sides[9 * i + k] = p[a + k]!;
      sides[9 * i + 3 + k] = p[b + k]! - p[a + k]!;
      sides[9 * i + 6 + k] = p[c + k]! - p[a + k]!;
    }
    const [ux, uy, uz, vx, vy, vz] = sides.subarray(9 * i + 3, 9 * i + 9) as unknown as readonly [number, number, number, number, number, number];
    const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const size = Math.sqrt(x * x + y * y + z * z) || 1;
    normals.set([x / size, y / size, z / size], 3 * i);
  }
  const facets = { sides, normals };
  known.set(solid, facets);
  return facets;
}

/** Normal of a facet, out of the material; of length nought where it has no area. */
export function normalOf(solid: Solid, triangle: number): Vector3 {
  const { normals } = facetsOf(solid);
  return [normals[3 * triangle]!, normals[3 * triangle + 1]!, normals[3 * triangle + 2]!];
}

/** The middle of a facet. */
export function middleOf(solid: Solid, triangle: number): Vector3 {
  const { sides: s } = facetsOf(solid);
  const i = 9 * triangle;
  const at = (k: number): number => s[i + k]! + (s[i + 3 + k]! + s[i + 6 + k]!) / 3;
  return [at(0), at(1), at(2)];
}

/** How broad a facet is across its longest side, mm: next to nothing for the slivers that facets of two rounds leave. */
export function breadthOf(solid: Solid, triangle: number): number {
  const { sides: s } = facetsOf(solid);
  const i = 9 * triangle;
  const [ux, uy, uz, vx, vy, vz] = [s[i + 3]!, s[i + 4]!, s[i + 5]!, s[i + 6]!, s[i + 7]!, s[i + 8]!];
  const twice = Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
  return twice / Math.max(Math.hypot(ux, uy, uz), Math.hypot(vx, vy, vz), Math.hypot(ux - vx, uy - vy, uz - vz), 1e-12);
}

/** How far outside a facet a ray may pass and still meet it, as a share of its sides: one through an edge misses neither. */
const slack = 1e-9;

/** All facets that a ray meets beyond `from`, nearest first. A ray through an edge that two facets share meets both. */
export function hitsAlong(solid: Solid, [ox, oy, oz]: Vector3, [dx, dy, dz]: Vector3, from = 1e-6): readonly Hit[] {
  const { sides: s } = facetsOf(solid);
  const found: Hit[] = [];
  // Written out: this runs for every facet of the solid, and vectors would be made for each.
  for (let i = 0, triangle = 0; i < s.length; i += 9, triangle += 1) {
    const vx = s[i + 6]!;
    const vy = s[i + 7]!;
    const vz = s[i + 8]!;
    const px = dy * vz - dz * vy;
    const py = dz * vx - dx * vz;
    const pz = dx * vy - dy * vx;
    const ux = s[i + 3]!;
    const uy = s[i + 4]!;
    const uz = s[i + 5]!;
    const determinant = ux * px + uy * py + uz * pz;
    if (determinant > -1e-14 && determinant < 1e-14) continue;
    const tx = ox - s[i]!;
    const ty = oy - s[i + 1]!;
    const tz = oz - s[i + 2]!;
    const u = (tx * px + ty * py + tz * pz) / determinant;
    if (u < -slack || u > 1 + slack) continue;
    const qx = ty * uz - tz * uy;
    const qy = tz * ux - tx * uz;
    const qz = tx * uy - ty * ux;
    const v = (dx * qx + dy * qy + dz * qz) / determinant;
    if (v < -slack || u + v > 1 + slack) continue;
    const distance = (vx * qx + vy * qy + vz * qz) / determinant;
    if (distance > from) found.push({ distance, triangle, normal: normalOf(solid, triangle) });
  }
  return found.sort((a, b) => a.distance - b.distance);
}
