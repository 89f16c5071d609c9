import { scale, type Vector3 } from '../../geometry/vector.js';
import type { Cut } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import type { FaceTag } from '../../solid/model.js';
import { machineFrame, toMachine, type MachineFrame } from '../machine-frame.js';
import type { OperationState } from '../states/state.js';
import { above, nearestFromAbove } from './flat-distance.js';
import { cornersOf, normalOf, place, pointOf, type Placed } from './placed.js';

/** A wall or a boss that stands beside what a cutter cuts. Lengths mm. */
export interface Beside {
  /** The cut whose cutter runs there. */
  readonly cut: string;
  /** The neighbour: a face of an earlier cut or of the stock. */
  readonly what: FaceTag;
  /**
   * From the edge of the cut to the neighbour, square to the cutter's axis: the room that a cutter has which just cleans the
   * edge. Nought where the cut runs up to it. Round neighbours count as nearer by what facets may be off.
   */
  readonly distance: number;
  /** How far the neighbour stands above the lowest place of the cut, or above the mouth of holes, along the cutter's axis. */
  readonly height: number;
}

/** A stretch of the edge of a cut, and a point of the cut beside it. */
interface Edge {
  readonly from: Vector3;
  readonly to: Vector3;
  readonly inside: Vector3;
}

/** How much higher than the edge something must be to stand beside it, mm. */
const least = 0.05;

/**
 * What stands beside the cuts of an operation, on mill and drill: faces that look toward the cut and rise above its edge,
 * nearest first, one entry for a cut and a face. Walls that the cut itself makes are not among them.
 * @param within mm from the cut; what is farther is left out.
 */
export function besideOf(part: Part, state: OperationState, within = 25): readonly Beside[] {
  const { operation, setUp, after, before } = state;
  if (setUp.machine === 'lathe' || setUp.machine === 'bench' || after === before) return [];
  const frame = machineFrame(part, setUp);
  const placed = place(after, frame);
  const own = new Set(operation.cuts.map(({ id }) => id));
  return operation.cuts.flatMap((cut) => besideCut(placed, cut, mouthOf(cut, frame), own, within)).sort((a, b) => a.distance - b.distance || b.height - a.height);
}

/** Height of the lowest mouth of a cut that is nothing but holes. */
function mouthOf({ sizes, forms }: Cut, frame: MachineFrame): { readonly height: number; readonly slope: number } | undefined {
  const holes = sizes.flatMap((size) => (size.kind === 'hole' || size.kind === 'counterbore' || size.kind === 'countersink' ? [size] : []));
  if (holes.length === 0 || forms.some(({ kind }) => kind !== 'revolution')) return undefined;
  return { height: Math.min(...holes.flatMap(({ points }) => points.map((point) => toMachine(frame, point)[2]))), slope: Math.max(...holes.map(({ diameter }) => diameter.value)) };
}

function besideCut(placed: Placed, { id: cut }: Cut, mouth: ReturnType<typeof mouthOf>, own: ReadonlySet<string>, within: number): readonly Beside[] {
  const { points } = placed;
  const { faces, faceOfTriangle, triangles, surfaces, facetError } = placed.solid;
  const all = edgesOf(placed, cut);
  const edges = mouth === undefined ? all.edges : all.edges.filter(({ from, to }) => Math.min(from[2], to[2]) > mouth.height - mouth.slope);
  const floor = mouth?.height ?? all.floor;
  const found = new Map<number, { distance: number; height: number }>();
  if (edges.length === 0) return [];
  const lowest = Math.min(...edges.map(({ from, to }) => Math.min(from[2], to[2])));
  const around = boxOf(edges);
  for (let triangle = 0; triangle < faceOfTriangle.length; triangle += 1) {
    const i = 3 * triangles[3 * triangle]!;
    const j = 3 * triangles[3 * triangle + 1]!;
    const k = 3 * triangles[3 * triangle + 2]!;
    const top = Math.max(points[i + 2]!, points[j + 2]!, points[k + 2]!);
    if (top < lowest + least) continue;
    if (Math.max(points[i]!, points[j]!, points[k]!) < around[0] - within || Math.min(points[i]!, points[j]!, points[k]!) > around[1] + within) continue;
    if (Math.max(points[i + 1]!, points[j + 1]!, points[k + 1]!) < around[2] - within || Math.min(points[i + 1]!, points[j + 1]!, points[k + 1]!) > around[3] + within) continue;
    const face = faceOfTriangle[triangle]!;
    if (own.has(faces[face]!.tag.cut) || (found.get(face)?.distance === 0 && found.get(face)!.height >= top - floor)) continue;
    const corners = cornersOf(placed, triangle);
    const normal = normalOf(placed, corners);
    if (Math.hypot(normal[0], normal[1]) < 0.1) continue;
    const lowX = Math.min(points[i]!, points[j]!, points[k]!);
    const highX = Math.max(points[i]!, points[j]!, points[k]!);
    const lowY = Math.min(points[i + 1]!, points[j + 1]!, points[k + 1]!);
    const highY = Math.max(points[i + 1]!, points[j + 1]!, points[k + 1]!);
    // The cut must lie on the side to which the face looks, seen from one of its corners at least.
    const back = Math.max(...corners.map((corner) => -normal[0] * corner[0] - normal[1] * corner[1]));
    const known = found.get(face);
    let most = Math.min(within, known?.distance ?? Infinity);
    for (const edge of edges) {
      const { from, to, inside } = edge;
      if (normal[0] * inside[0] + normal[1] * inside[1] + back < 1e-6) continue;
      if (lowX - most > from[0] && lowX - most > to[0]) continue;
      if (highX + most < from[0] && highX + most < to[0]) continue;
      if (lowY - most > from[1] && lowY - most > to[1]) continue;
      if (highY + most < from[1] && highY + most < to[1]) continue;
      const standing = above(corners, Math.min(from[2], to[2]) + least);
      if (standing.length === 0) continue;
      const { distance, at } = nearestFromAbove(from, to, standing);
      if (distance > most || !looksAt(normal, at, edge)) continue;
      most = distance;
      found.set(face, { distance, height: Math.max(top - floor, found.get(face)?.height ?? 0) });
    }
    if (known !== undefined && found.get(face)!.height < top - floor) found.set(face, { ...found.get(face)!, height: top - floor });
  }
  return [...found].filter(([, { height }]) => height > least).map(([face, { distance, height }]) => {
    const round = surfaces[faces[face]!.surface]?.kind !== 'plane';
    return { cut, what: faces[face]!.tag, distance: Math.max(0, tidy(distance - (round ? facetError : 0))), height: tidy(height) };
  });
}

/** Least and greatest x, then y, of all edges. */
const boxOf = (edges: readonly Edge[]): readonly [number, number, number, number] => {
  const ends = edges.flatMap(({ from, to }) => [from, to]);
  return [Math.min(...ends.map(([x]) => x)), Math.max(...ends.map(([x]) => x)), Math.min(...ends.map(([, y]) => y)), Math.max(...ends.map(([, y]) => y))];
};

/** Noise of places kept to 32 bits. */
const tidy = (value: number): number => Math.round(value * 1e4) / 1e4;

/** Whether a face at `at` looks toward the cut. */
const looksAt = (normal: Vector3, at: Vector3, { inside }: Edge): boolean => normal[0] * (inside[0] - at[0]) + normal[1] * (inside[1] - at[1]) > 1e-6;

/** The outer edges of what a cut has left, but for the feet of its own walls, and its lowest height. */
function edgesOf(placed: Placed, cut: string): { readonly edges: readonly Edge[]; readonly floor: number } {
  const { faces, triangles } = placed.solid;
  const seen = new Map<string, Edge & { readonly count: number; readonly foot: boolean }>();
  let floor = Infinity;
  for (const triangle of placed.members.flatMap((members, face) => (faces[face]!.tag.cut === cut ? members : []))) {
    const corners = cornersOf(placed, triangle);
    const inside = scale([corners[0][0] + corners[1][0] + corners[2][0], corners[0][1] + corners[1][1] + corners[2][1], corners[0][2] + corners[1][2] + corners[2][2]], 1 / 3);
    const steep = Math.abs(normalOf(placed, corners)[2]) < 0.5;
    floor = Math.min(floor, corners[0][2], corners[1][2], corners[2][2]);
    for (const i of [0, 1, 2]) {
      const [p, q] = [triangles[3 * triangle + i]!, triangles[3 * triangle + ((i + 1) % 3)]!];
      const key = p < q ? `${p} ${q}` : `${q} ${p}`;
      const [from, to] = [pointOf(placed, p), pointOf(placed, q)];
      seen.set(key, { from, to, inside, foot: steep && inside[2] > Math.max(from[2], to[2]) + 1e-6, count: (seen.get(key)?.count ?? 0) + 1 });
    }
  }
  return { edges: [...seen.values()].filter(({ count, foot }) => count === 1 && !foot), floor };
}
