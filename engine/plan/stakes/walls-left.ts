import { dot, scale, subtract, type Vector3 } from '../../geometry/vector.js';
import type { Solid } from '../../solid/model.js';
import { gapBetween, type Sided } from './gap.js';
import { breadthOf, hitsAlong, middleOf, normalOf } from './ray.js';

/** A wall that a cut has left thin. */
export interface WallLeft {
  /** mm, of the exact surfaces. */
  readonly thickness: number;
  /** Through the wall. */
  readonly direction: Vector3;
  /** The cut on its other side; `stock` for the bar. */
  readonly behind: string;
}

/** Facets narrower than this, mm, may be what the facets of two rounds leave between them: they are no faces. */
const sliver = 0.05;

/** So many facets of a surface are looked through: those that face the wall squarest. */
const looks = 6;

/** A surface of a solid with its facets. */
interface Patch {
  readonly triangles: number[];
  readonly cuts: Set<string>;
  readonly sided: Sided;
  /** The box that the facets fill: low and high x, y, z. */
  readonly box: Float64Array;
}

/** How the facets of each surface lie, and on which side its metal is. */
function patchesOf(solid: Solid): ReadonlyMap<number, Patch> {
  const found = new Map<number, Patch>();
  solid.faceOfTriangle.forEach((face, triangle) => {
    const { surface: index, tag } = solid.faces[face]!;
    const known = found.get(index);
    if (known !== undefined) {
      known.triangles.push(triangle);
      known.cuts.add(tag.cut);
      grow(known.box, solid, triangle);
      return;
    }
    const surface = solid.surfaces[index]!;
    const hollow = surface.kind === 'cylinder' && hollowAt(solid, triangle, surface);
    const box = new Float64Array([Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity]);
    grow(box, solid, triangle);
    found.set(index, { triangles: [triangle], cuts: new Set([tag.cut]), sided: { surface, hollow }, box });
  });
  return found;
}

function grow(box: Float64Array, { positions, triangles }: Solid, triangle: number): void {
  for (let k = 0; k < 3; k += 1) {
    const at = 3 * triangles[3 * triangle + k]!;
    for (let axis = 0; axis < 3; axis += 1) {
      const value = positions[at + axis]!;
      if (value < box[axis]!) box[axis] = value;
      if (value > box[axis + 3]!) box[axis + 3] = value;
    }
  }
}

/** Whether two boxes are nowhere farther apart than `most` along any axis. */
const near = (a: Float64Array, b: Float64Array, most: number): boolean => [0, 1, 2].every((axis) => a[axis]! - b[axis + 3]! <= most && b[axis]! - a[axis + 3]! <= most);

function hollowAt(solid: Solid, triangle: number, { origin, axis }: { readonly origin: Vector3; readonly axis: Vector3 }): boolean {
  const offset = subtract(middleOf(solid, triangle), origin);
  return dot(subtract(offset, scale(axis, dot(offset, axis))), normalOf(solid, triangle)) < 0;
}

/**
 * The thin walls between faces of some cuts and what lies behind them, thinnest first. Facets only tell whether two surfaces
 * lie behind one another; the thickness is that of the exact surfaces. Cones and rounds other than cylinders are left out.
 * @param under mm; thicker walls are left out.
 */
export function wallsLeft(solid: Solid, cuts: ReadonlySet<string>, under: number): readonly WallLeft[] {
  const all = patchesOf(solid);
  const walls: WallLeft[] = [];
  for (const [index, own] of all) {
    if (![...own.cuts].some((cut) => cuts.has(cut))) continue;
    for (const [other, behind] of all) {
      if (other === index || !near(own.box, behind.box, under)) continue;
      const gap = gapBetween(own.sided, behind.sided);
      if (gap === undefined || gap.thickness >= under) continue;
      const through = (from: readonly number[], to: number, direction: Vector3): boolean =>
        facing(solid, from, direction).some((triangle) => {
          const first = hitsAlong(solid, middleOf(solid, triangle), direction)[0];
          return first !== undefined && first.distance < gap.thickness * 1.3 + 0.05 && solid.faces[solid.faceOfTriangle[first.triangle]!]!.surface === to;
        });
      if (through(own.triangles, other, gap.direction) || through(behind.triangles, index, scale(gap.direction, -1))) {
        walls.push({ ...gap, behind: [...behind.cuts].find((cut) => !cuts.has(cut)) ?? [...behind.cuts][0]! });
      }
    }
  }
  return walls.sort((a, b) => a.thickness - b.thickness);
}

/** Facets of a surface from which one looks through the wall the way `direction`, those that face it squarest first. */
function facing(solid: Solid, triangles: readonly number[], direction: Vector3): readonly number[] {
  return triangles
    .map((triangle) => ({ triangle, cosine: -dot(normalOf(solid, triangle), direction) }))
    .filter(({ triangle, cosine }) => cosine > 0.95 && breadthOf(solid, triangle) > Math.max(sliver, 3 * solid.facetError))
    .sort((a, b) => b.cosine - a.cosine || a.triangle - b.triangle)
    .slice(0, looks)
    .map(({ triangle }) => triangle);
}
