import { bodiesOf, meshesOf, reachOf } from './bodies.js';
import { DEFAULT_SEGMENTS } from './grid.js';
import { withBodies, type Kernel } from './kernel.js';
import { bodyOfSolid } from './mesh-body.js';
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
    const [a, b] = [keep(bodyOfSolid(kernel, first)), keep(bodyOfSolid(kernel, second))];
    const bodies = bodiesOf(kernel, region, meshes, new SurfaceTable(reach.size), false, keep);
    const inside = keep(Manifold.union(bodies));
    const here = [keep(Manifold.intersection(a, inside)), keep(Manifold.intersection(b, inside))] as const;
    return {
      region: inside.volume(),
      missing: keep(Manifold.difference(here[0], here[1])).volume(),
      extra: keep(Manifold.difference(here[1], here[0])).volume(),
    };
  });
}
