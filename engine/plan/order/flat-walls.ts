import { cross, dot, scale, subtract, type Vector3 } from '../../geometry/vector.js';
import type { Cut } from '../../part/cut.js';
import type { Solid, Surface } from '../../solid/model.js';
import { faceAreas } from '../../solid/measure.js';
import { offsetFrom } from '../../solid/surface.js';
import { trianglesOfFaces } from './placed.js';

/** The thinnest metal behind the flat faces of a cut. Lengths mm. */
export interface FlatWall {
  readonly thickness: number;
  /** How far the face reaches along `up`: the height of the wall, or 0 for a floor. */
  readonly height: number;
  /** The cut, or `stock`, whose face bounds it on the other side. */
  readonly other: string;
}

/** Places tried on each face at most. */
const tried = 60;
/** A face of less is a sliver between facets, mm2. */
const least = 1;
/** The far side must look the other way, within this cosine: toward an edge metal always runs out. */
const facing = 0.8;

/**
 * Undefined where the cut leaves no flat face, or none with a thin wall behind it: thicker ones than `limit` mm and than the
 * height of the face over `slender` are not looked for. Between parallel faces the thickness is their own distance; what
 * bounds the wall is looked for at some sixty places of each face.
 */
export function thinnestFlat(solid: Solid, { id }: Cut, up: Vector3, limit: number, slender: number): FlatWall | undefined {
  const { faces, surfaces, triangles, positions } = solid;
  const corner = (index: number): Vector3 => [positions[3 * index]!, positions[3 * index + 1]!, positions[3 * index + 2]!];
  const cornersOf = (triangle: number): readonly [Vector3, Vector3, Vector3] => [corner(triangles[3 * triangle]!), corner(triangles[3 * triangle + 1]!), corner(triangles[3 * triangle + 2]!)];
  let areas: readonly number[] | undefined;
  let best: FlatWall | undefined;
  trianglesOfFaces(solid).forEach((members, face) => {
    const surface = surfaces[faces[face]!.surface]!;
    if (members.length === 0 || faces[face]!.tag.cut !== id || surface.kind !== 'plane') return;
    const own = members.map(cornersOf);
    const heights = own.flat().map((point) => dot(point, up));
    const height = Math.abs(dot(surface.normal, up)) > 0.5 ? 0 : Math.max(...heights) - Math.min(...heights);
    const inward = scale(surface.normal, -1);
    const behind = trianglesBehind(solid, face, surface, inward, Math.max(limit, height / slender)).map((triangle) => ({ triangle, corners: cornersOf(triangle) }));
    if (behind.length === 0) return;
    areas ??= faceAreas(solid);
    const step = Math.max(1, Math.ceil((4 * own.length) / tried));
    const places = own.flatMap((corners) => weights.map((weight) => mixed(corners, weight)));
    for (let i = 0; i < places.length; i += step) {
      const hits = behind.flatMap(({ triangle, corners }) => {
        const far = through(places[i]!, inward, corners);
        return far === undefined || far < 1e-3 ? [] : [{ far, face: solid.faceOfTriangle[triangle]! }];
      });
      const first = hits.sort((a, b) => a.far - b.far)[0];
      if (first === undefined || areas[first.face]! < least) continue;
      const other = surfaces[faces[first.face]!.surface]!;
      const across = offsetFrom(other, subtract(places[i]!, scale(surface.normal, first.far))).normal;
      if (Math.abs(dot(across, surface.normal)) < facing) continue;
      if (best === undefined || first.far < best.thickness) best = { thickness: exact(surface, other, first.far), height, other: faces[first.face]!.tag.cut };
    }
  });
  return best;
}

const weights = [[1, 1, 1], [8, 1, 1], [1, 8, 1], [1, 1, 8]] as const;

const mixed = ([a, b, c]: readonly [Vector3, Vector3, Vector3], [i, j, k]: readonly [number, number, number]): Vector3 => {
  const sum = i + j + k;
  return [(a[0] * i + b[0] * j + c[0] * k) / sum, (a[1] * i + b[1] * j + c[1] * k) / sum, (a[2] * i + b[2] * j + c[2] * k) / sum];
};

/** Triangles of which something lies behind a plane, no deeper than `depth`. */
function trianglesBehind({ positions, triangles, faceOfTriangle }: Solid, face: number, plane: Extract<Surface, { kind: 'plane' }>, inward: Vector3, depth: number): readonly number[] {
  const zero = dot(plane.point, inward);
  const depths = new Float64Array(positions.length / 3);
  for (let i = 0; i < depths.length; i += 1) depths[i] = positions[3 * i]! * inward[0] + positions[3 * i + 1]! * inward[1] + positions[3 * i + 2]! * inward[2] - zero;
  const found: number[] = [];
  for (let t = 0; t < faceOfTriangle.length; t += 1) {
    const a = depths[triangles[3 * t]!]!;
    const b = depths[triangles[3 * t + 1]!]!;
    const c = depths[triangles[3 * t + 2]!]!;
    if (faceOfTriangle[t] !== face && (a < depth || b < depth || c < depth) && (a > 1e-3 || b > 1e-3 || c > 1e-3)) found.push(t);
  }
  return found;
}

/** How far along a direction a line from a point meets a triangle, mm (Moeller and Trumbore); undefined where it does not. */
function through(point: Vector3, direction: Vector3, [a, b, c]: readonly [Vector3, Vector3, Vector3]): number | undefined {
  const [e, f] = [subtract(b, a), subtract(c, a)];
  const p = cross(direction, f);
  const det = dot(e, p);
  if (Math.abs(det) < 1e-12) return undefined;
  const offset = subtract(point, a);
  const u = dot(offset, p) / det;
  if (u < -1e-9 || u > 1 + 1e-9) return undefined;
  const q = cross(offset, e);
  const v = dot(direction, q) / det;
  return v < -1e-9 || u + v > 1 + 1e-9 ? undefined : dot(f, q) / det;
}

/** Between two parallel faces the distance is their own. */
function exact(near: { readonly point: Vector3; readonly normal: Vector3 }, far: Surface, seen: number): number {
  if (far.kind !== 'plane' || dot(far.normal, near.normal) > -1 + 1e-9) return seen;
  return Math.abs(dot(subtract(near.point, far.point), near.normal));
}
