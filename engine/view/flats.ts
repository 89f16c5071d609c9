import { add, cross, dot, length, scale, subtract, type Vector3 } from '../geometry/vector.js';
import type { Solid } from '../solid/model.js';
import type { AddedCurve, Camera } from './model.js';
import { turnedAxisOf, type TurnedAxis } from './turned-axis.js';

/** How far before the face its lines are tested, mm: clear of facets, less than anything made. */
const off = 0.02;
const same = 1e-4;

/** A flat fills at least this share of the rectangle between its side edges; else something is cut out of it. */
const leastFilled = 0.9;

/**
 * The crossed thin diagonals that mark a flat on a round (ISO 128-3): for each plane face of an otherwise turned body that is
 * seen in its true shape, lies outward of the axis, and falls off to both sides along it, as a keyway's floor does not.
 * Faces of the bar and of sections carry none.
 */
export function flatDiagonals(solid: Solid, camera: Camera): readonly AddedCurve[] {
  const axis = turnedAxisOf(solid);
  if (axis === undefined || Math.abs(dot(axis.direction, camera.toward)) > same) return [];
  return solid.surfaces.flatMap((surface, i): readonly AddedCurve[] => {
    if (surface.kind !== 'plane' || dot(surface.normal, camera.toward) > -1 + same) return [];
    if (dot(surface.normal, subtract(surface.point, axis.point)) < same) return [];
    return diagonalsOf(solid, i, surface.normal, axis, camera);
  });
}

function diagonalsOf(solid: Solid, surface: number, normal: Vector3, axis: TurnedAxis, camera: Camera): readonly AddedCurve[] {
  const { faces, faceOfTriangle, triangles } = solid;
  const own = new Set(faces.flatMap((face, i) => (face.surface === surface && face.tag.cut !== 'stock' && face.tag.cut !== 'section' ? [i] : [])));
  const facets: number[] = [];
  faceOfTriangle.forEach((face, t) => {
    if (own.has(face)) facets.push(t);
  });
  return islands(triangles, facets).flatMap((island, k): readonly AddedCurve[] => {
    const corners = sideEnds(solid, island, normal, axis);
    if (corners === undefined) return [];
    const name = `flat ${surface} ${k}`;
    const line = (from: Vector3, to: Vector3): AddedCurve => {
      const nearer = scale(camera.toward, -off);
      return { role: 'flat', name, drawn: { kind: 'line', from, to }, tested: { kind: 'line', from: add(from, nearer), to: add(to, nearer) } };
    };
    return [line(corners[0], corners[3]), line(corners[1], corners[2])];
  });
}

/** Facets that hang together by their edges. */
function islands(triangles: Uint32Array, facets: readonly number[]): readonly (readonly number[])[] {
  const byCorner = new Map<number, number[]>();
  for (const t of facets) for (let k = 0; k < 3; k += 1) byCorner.set(triangles[3 * t + k]!, [...(byCorner.get(triangles[3 * t + k]!) ?? []), t]);
  const left = new Set(facets);
  const found: number[][] = [];
  for (const first of facets) {
    if (!left.delete(first)) continue;
    const island = [first];
    for (let i = 0; i < island.length; i += 1)
      for (let k = 0; k < 3; k += 1) for (const next of byCorner.get(triangles[3 * island[i]! + k]!) ?? []) if (left.delete(next)) island.push(next);
    found.push(island);
  }
  return found;
}

/**
 * The ends of a flat's two side edges: low and high end of one, then of the other. Undefined where it has no two such edges
 * as far from the axis, where metal rises beside one, or where much is cut out of the face.
 */
function sideEnds(solid: Solid, facets: readonly number[], normal: Vector3, axis: TurnedAxis): readonly [Vector3, Vector3, Vector3, Vector3] | undefined {
  const across = cross(axis.direction, normal);
  const at = (vertex: number): Vector3 => [solid.positions[3 * vertex]!, solid.positions[3 * vertex + 1]!, solid.positions[3 * vertex + 2]!];
  const corners = [...new Set(facets.flatMap((t) => [0, 1, 2].map((k) => solid.triangles[3 * t + k]!)))].map((vertex) => ({ vertex, along: dot(at(vertex), axis.direction), aside: dot(at(vertex), across) }));
  const [low, high] = [Math.min(...corners.map(({ aside }) => aside)), Math.max(...corners.map(({ aside }) => aside))];
  const ends = [low, high].flatMap((side): Vector3[] => {
    const there = corners.filter(({ aside }) => Math.abs(aside - side) < same).sort((a, b) => a.along - b.along);
    return there.length < 2 ? [] : [at(there[0]!.vertex), at(there[there.length - 1]!.vertex)];
  });
  const [a, b, c, d] = ends;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return undefined;
  const lengths = [length(subtract(b, a)), length(subtract(d, c))] as const;
  if (Math.min(...lengths) < same || Math.abs(lengths[0] - lengths[1]) > 0.02 * lengths[0]) return undefined;
  const area = facets.reduce((sum, t) => {
    const [p, q, r] = [0, 1, 2].map((k) => at(solid.triangles[3 * t + k]!)) as [Vector3, Vector3, Vector3];
    return sum + length(cross(subtract(q, p), subtract(r, p))) / 2;
  }, 0);
  if (area < leastFilled * lengths[0] * (high - low)) return undefined;
  return risesBeside(solid, facets, normal, axis) ? undefined : [a, b, c, d];
}

/** True where a face beside a flat, along one of its edges that run with the axis, stands up from it. */
function risesBeside({ positions, triangles }: Solid, facets: readonly number[], normal: Vector3, { direction }: TurnedAxis): boolean {
  const at = (vertex: number): Vector3 => [positions[3 * vertex]!, positions[3 * vertex + 1]!, positions[3 * vertex + 2]!];
  const count = positions.length / 3;
  const key = (from: number, to: number): number => from * count + to;
  const own = new Set(facets.flatMap((t) => [0, 1, 2].map((k) => key(triangles[3 * t + k]!, triangles[3 * t + ((k + 1) % 3)]!))));
  const level = dot(at(triangles[3 * facets[0]!]!), normal);
  for (let t = 0; 3 * t < triangles.length; t += 1)
    for (let k = 0; k < 3; k += 1) {
      const [from, to, third] = [triangles[3 * t + k]!, triangles[3 * t + ((k + 1) % 3)]!, triangles[3 * t + ((k + 2) % 3)]!];
      if (!own.has(key(to, from)) || own.has(key(from, to))) continue;
      const edge = subtract(at(to), at(from));
      if (Math.abs(dot(edge, direction)) > 0.99 * length(edge) && dot(at(third), normal) > level + same) return true;
    }
  return false;
}
