import { add, cross, dot, scale, subtract, unit, type Vector3 } from '../../geometry/vector.js';
import type { Solid } from '../../solid/model.js';
import { above, nearestFromAbove } from './flat-distance.js';

/** The thinnest metal round a hole, and what bounds it. */
export interface HoleWall {
  readonly thickness: number;
  readonly other: string;
}

/** What of a polygon lies between two heights. */
const between = (corners: readonly Vector3[], low: number, high: number): readonly Vector3[] => above(above(corners, low).map(([x, y, z]): Vector3 => [x, y, -z]), -high).map(([x, y, z]): Vector3 => [x, y, -z]);

/**
 * Round a hole from `point` along `direction`, between two depths: the distance from its wall to the nearest face that looks
 * away from it. Faces of `own` cuts and such as the hole runs into are left out. Round faces count as their facets lie, which
 * is nearer by less than the facet error. Undefined where nothing bounds it within `within` mm.
 */
export function thinnestRound(solid: Solid, point: Vector3, direction: Vector3, radius: number, [from, to]: readonly [number, number], own: ReadonlySet<string>, within: number): HoleWall | undefined {
  const u = unit(cross(Math.abs(direction[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0], direction));
  const v = cross(direction, u);
  const { positions, triangles, faceOfTriangle, faces } = solid;
  const reach = radius + within;
  // The box of the hole and what stands round it.
  const ends = [along(point, direction, from), along(point, direction, to)];
  const [low, high] = [[0, 1, 2].map((x) => Math.min(...ends.map((end) => end[x]!)) - reach), [0, 1, 2].map((x) => Math.max(...ends.map((end) => end[x]!)) + reach)];
  let best: HoleWall | undefined;
  for (let t = 0; t < faceOfTriangle.length; t += 1) {
    const i = 3 * triangles[3 * t]!;
    const j = 3 * triangles[3 * t + 1]!;
    const k = 3 * triangles[3 * t + 2]!;
    // Far off on any axis of the part, or beyond the ends: most are.
    if (aside(positions, i, j, k, low[0]!, high[0]!) || aside(positions, i + 1, j + 1, k + 1, low[1]!, high[1]!) || aside(positions, i + 2, j + 2, k + 2, low[2]!, high[2]!)) continue;
    const { tag } = faces[faceOfTriangle[t]!]!;
    if (own.has(tag.cut)) continue;
    const corners = [i, j, k].map((at): Vector3 => {
      const offset: Vector3 = [positions[at]! - point[0], positions[at + 1]! - point[1], positions[at + 2]! - point[2]];
      return [dot(offset, u), dot(offset, v), dot(offset, direction)];
    });
    const [a, b, c] = corners as [Vector3, Vector3, Vector3];
    if (Math.max(a[2], b[2], c[2]) <= from || Math.min(a[2], b[2], c[2]) >= to) continue;
    const normal = cross(subtract(b, a), subtract(c, a));
    const size = Math.sqrt(dot(normal, normal));
    if (size < 1e-12 || Math.abs(normal[2]) > 0.9 * size) continue;
    const piece = between(corners, Math.max(from, 1e-6), to);
    if (piece.length < 3) continue;
    const axis: Vector3 = [0, 0, 0];
    const { distance, at } = nearestFromAbove(axis, axis, piece);
    const thickness = distance - radius;
    // A face nearer than the wall itself is one that the hole runs into.
    if (thickness < 1e-3 || thickness > within || at[0] * normal[0] + at[1] * normal[1] <= 0.3 * size * distance) continue;
    if (best === undefined || thickness < best.thickness) best = { thickness, other: tag.cut };
  }
  return best;
}

/** Whether three coordinates lie on one side of two bounds. */
const aside = (positions: Float64Array, i: number, j: number, k: number, low: number, high: number): boolean => (positions[i]! < low && positions[j]! < low && positions[k]! < low) || (positions[i]! > high && positions[j]! > high && positions[k]! > high);

/** The point so far along a direction. */
export const along = (point: Vector3, direction: Vector3, far: number): Vector3 => add(point, scale(direction, far));
