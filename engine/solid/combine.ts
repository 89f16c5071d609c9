import type { Manifold } from 'manifold-3d/manifold';
import { mirrorForm } from '../part/mirror.js';
import { solidOfBody } from './assemble.js';
import { bodiesOf, meshesOf, reachOf } from './bodies.js';
import type { SolidOptions } from './build.js';
import { DEFAULT_SEGMENTS } from './grid.js';
import { withBodies, type Kernel } from './kernel.js';
import { bodyOfSolid, heldBody } from './mesh-body.js';
import type { Solid } from './model.js';
import { reflectSolid } from './reflect.js';
import { SurfaceTable } from './surface-table.js';
import type { TaggedForm } from './tagged-form.js';

/** What cuts have left of each solid, by what they were made with. */
const cuts = new WeakMap<Solid, Map<string, Solid>>();

/**
 * A solid less the forms of a tool; faces already there keep their tags. The same cut is made once, and a cut of a mirror
 * image is the mirror image of the cut.
 */
export function cutSolid(kernel: Kernel, solid: Solid, tool: readonly TaggedForm[], options: SolidOptions = {}): Solid {
  if (solid.imageOf !== undefined) {
    const { axis, solid: source } = solid.imageOf;
    const reversed = tool.map(({ cut, form }) => ({ cut, form: mirrorForm(axis, form) }));
    return reflectSolid(cutSolid(kernel, source, reversed, options), axis);
  }
  const known = cuts.get(solid) ?? new Map<string, Solid>();
  cuts.set(solid, known);
  const key = JSON.stringify([tool, options]);
  const left = known.get(key) ?? withTool(kernel, solid, tool, 'difference', options);
  known.set(key, left);
  return left;
}

const chips = new WeakMap<Solid, Map<string, Solid>>();

/** What a tool takes from a solid: the chips of an operation, in one piece, made once. Faces made by the tool carry its tags. */
export function removedSolid(kernel: Kernel, solid: Solid, tool: readonly TaggedForm[], options: SolidOptions = {}): Solid {
  const known = chips.get(solid) ?? new Map<string, Solid>();
  chips.set(solid, known);
  const key = JSON.stringify([tool, options]);
  const taken = known.get(key) ?? withTool(kernel, solid, tool, 'intersection', options);
  known.set(key, taken);
  return taken;
}

function withTool(
  kernel: Kernel,
  solid: Solid,
  tool: readonly TaggedForm[],
  way: 'difference' | 'intersection',
  options: SolidOptions,
): Solid {
  const reach = reachOf([solid.positions]);
  const table = new SurfaceTable(reach.size);
  const numbers = solid.faces.map(({ tag, surface }) => {
    const own = solid.surfaces[surface];
    if (own === undefined) throw new RangeError('a face of the solid names a surface that it does not have');
    return table.face(tag, own, solid.facetError);
  });
  const segments = options.segments ?? DEFAULT_SEGMENTS;
  const meshes = meshesOf(kernel, tool.map((item) => item.form), segments, reach, new Map());
  return withBodies((keep) => {
    const { Manifold } = kernel.booleans;
    const asTheyAre = numbers.every((number, i) => number === i);
    const whole = asTheyAre ? heldBody(kernel, solid) : keep(bodyOfSolid(kernel, { ...solid, faceOfTriangle: solid.faceOfTriangle.map((face) => numbers[face] ?? 0) }));
    const cutter = bodiesOf(kernel, tool, meshes, table, way === 'difference', keep);
    const united = keep(Manifold.union(cutter));
    const left = keep(way === 'difference' ? Manifold.difference(whole, united) : Manifold.intersection(whole, united));
    return solidOfBody(left, table);
  });
}

/** Volume common to two solids, mm3, as their facets have it. */
export const intersectionVolume = (kernel: Kernel, a: Solid, b: Solid): number =>
  measured(kernel, a, b, (first, second, keep) => keep(kernel.booleans.Manifold.intersection(first, second)).volume());

/** Volume that belongs to one of two solids only, mm3, as their facets have it. */
export const symmetricDifferenceVolume = (kernel: Kernel, a: Solid, b: Solid): number =>
  measured(kernel, a, b, (first, second, keep) => {
    const { Manifold } = kernel.booleans;
    const only = [keep(Manifold.difference(first, second)), keep(Manifold.difference(second, first))];
    return only.reduce((sum, body) => sum + body.volume(), 0);
  });

function measured(
  kernel: Kernel,
  a: Solid,
  b: Solid,
  measure: (a: Manifold, b: Manifold, keep: (body: Manifold) => Manifold) => number,
): number {
  return withBodies((keep) => measure(heldBody(kernel, a), heldBody(kernel, b), keep));
}
