import type { Manifold } from 'manifold-3d/manifold';
import type { Vector3 } from '../geometry/vector.js';
import { withBodies, type Kernel } from './kernel.js';
import { columnMajor } from './column-major.js';
import { heldBody } from './mesh-body.js';
import type { Solid } from './model.js';
import { movePoint, type Motion } from './transform.js';

/** Room that two solids both take. */
export interface Overlap {
  /** mm3 */
  readonly volume: number;
  /** How thick the thickest piece of it is, mm: twice its volume over its area, so that a sliver counts by its thickness. */
  readonly thickness: number;
  /** A point within that piece, mm. */
  readonly at: Vector3;
}

const nothing: Overlap = { volume: 0, thickness: 0, at: [0, 0, 0] };

/** What two solids have in common, as their facets have it. */
export function overlapOf(kernel: Kernel, a: Solid, b: Solid): Overlap {
  if (a.triangles.length === 0 || b.triangles.length === 0 || boxesApart(a, b)) return nothing;
  return withBodies((keep) => common(keep(kernel.booleans.Manifold.intersection(heldBody(kernel, a), heldBody(kernel, b))), keep));
}

/** As `overlapOf`, of a solid moved to another place, for which no solid is made. */
export function overlapOfMoved(kernel: Kernel, moving: Solid, motion: Motion, still: Solid): Overlap {
  if (moving.triangles.length === 0 || still.triangles.length === 0 || apart(movedBox(motion, boxOfVertices(moving)), boxOfVertices(still))) return nothing;
  return withBodies((keep) => common(keep(kernel.booleans.Manifold.intersection(keep(heldBody(kernel, moving).transform(columnMajor(motion))), heldBody(kernel, still))), keep));
}


function common(both: Manifold, keep: (body: Manifold) => Manifold): Overlap {
  if (both.isEmpty()) return nothing;
  return both.decompose().reduce<Overlap>((most, body) => {
    const piece = keep(body);
    const thickness = (2 * piece.volume()) / piece.surfaceArea();
    const { min, max } = piece.boundingBox();
    const here: Overlap = { volume: most.volume + piece.volume(), thickness, at: [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2] };
    return thickness > most.thickness ? here : { ...most, volume: here.volume };
  }, nothing);
}

/** The least distance between two solids, mm, as their facets have it; nought where they meet, `most` where it is no less. */
export function gapBetween(kernel: Kernel, a: Solid, b: Solid, most: number): number {
  if (boxesApart(a, b, most)) return most;
  return withBodies((keep) => {
    const [first, second] = [heldBody(kernel, a), heldBody(kernel, b)];
    return keep(kernel.booleans.Manifold.intersection(first, second)).isEmpty() ? first.minGap(second, most) : 0;
  });
}

const boxes = new WeakMap<Solid, readonly [number[], number[]]>();

function boxOfVertices(solid: Solid): readonly [number[], number[]] {
  const known = boxes.get(solid);
  if (known !== undefined) return known;
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  solid.positions.forEach((value, i) => {
    if (value < low[i % 3]!) low[i % 3] = value;
    if (value > high[i % 3]!) high[i % 3] = value;
  });
  boxes.set(solid, [low, high]);
  return [low, high];
}

type Box = readonly [readonly number[], readonly number[]];

const boxesApart = (a: Solid, b: Solid, by = 0): boolean => apart(boxOfVertices(a), boxOfVertices(b), by);

const apart = ([lowA, highA]: Box, [lowB, highB]: Box, by = 0): boolean => [0, 1, 2].some((i) => lowA[i]! > highB[i]! + by || lowB[i]! > highA[i]! + by);

/** A box round a box that is moved. */
function movedBox(motion: Motion, box: Box): Box {
  const corners = [0, 1, 2, 3, 4, 5, 6, 7].map((bits) => movePoint(motion, [box[bits & 1]![0]!, box[(bits >> 1) & 1]![1]!, box[(bits >> 2) & 1]![2]!]));
  return [Math.min, Math.max].map((pick) => [0, 1, 2].map((i) => pick(...corners.map((corner) => corner[i]!)))) as unknown as Box;
}
