import { bodiesOf, meshesOf, reachOf } from './bodies.js';
import { DEFAULT_SEGMENTS } from './grid.js';
import { withBodies, type Kernel } from './kernel.js';
import { heldBody } from './mesh-body.js';
import type { Solid } from './model.js';
import { SurfaceTable } from './surface-table.js';
import type { TaggedForm } from './tagged-form.js';

/** How two solids differ inside a region, mm3. */
export interface DifferenceWithin {
  /** Volume of the region. */
  readonly region: number;
  /** What the first has there and the second lacks. */
  readonly missing: number;
  /** What the second has there and the first lacks. */
  readonly extra: number;
}

/** Compares two solids inside the union of some forms, none a half-space, as their facets have it. */
export function differenceWithin(kernel: Kernel, first: Solid, second: Solid, region: readonly TaggedForm[]): DifferenceWithin {
  const reach = reachOf([first.positions, second.positions]);
  const meshes = meshesOf(kernel, region.map(({ form }) => form), DEFAULT_SEGMENTS, reach, new Map());
  return withBodies((keep) => {
    const { Manifold } = kernel.booleans;
    const [a, b] = [heldBody(kernel, first), heldBody(kernel, second)];
    const bodies = bodiesOf(kernel, region, meshes, new SurfaceTable(reach.size), false, keep);
    const inside = keep(Manifold.union(bodies));
    const here = [keep(Manifold.intersection(a, inside)), keep(Manifold.intersection(b, inside))] as const;
    return {
      region: inside.volume(),
      missing: Math.max(0, keep(Manifold.difference(here[0], here[1])).volume()),
      extra: Math.max(0, keep(Manifold.difference(here[1], here[0])).volume()),
    };
  });
}

/** Metal of a solid inside the union of some forms, as its facets have it: no more than its volume and its corners. */
export interface MetalWithin {
  /** mm3 */
  readonly volume: number;
  /** x, y, z of each corner. */
  readonly positions: Float32Array;
}

/** What a solid has inside some forms, none a half-space unless it meets the solid. Much quicker than a solid of it. */
export function metalWithin(kernel: Kernel, solid: Solid, region: readonly TaggedForm[], segments = DEFAULT_SEGMENTS): MetalWithin {
  if (region.length === 0 || solid.triangles.length === 0) return { volume: 0, positions: new Float32Array() };
  const reach = reachOf([solid.positions]);
  const meshes = meshesOf(kernel, region.map(({ form }) => form), segments, reach, new Map());
  return withBodies((keep) => {
    const { Manifold } = kernel.booleans;
    const bodies = bodiesOf(kernel, region, meshes, new SurfaceTable(reach.size), false, keep);
    const inside = bodies.length === 1 ? bodies[0]! : keep(Manifold.union(bodies));
    const common = keep(Manifold.intersection(heldBody(kernel, solid), inside));
    const volume = common.volume();
    if (!(volume > 0)) return { volume: 0, positions: new Float32Array() };
    const { numProp, vertProperties } = common.getMesh();
    if (numProp === 3) return { volume, positions: vertProperties };
    return { volume, positions: vertProperties.filter((_, i) => i % numProp < 3) };
  });
}
