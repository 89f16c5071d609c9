import type { Part } from '../part/part.js';
import { solidOfBody } from './assemble.js';
import { bodiesOf, meshesOf, reachOf } from './bodies.js';
import type { SweptMesh } from './swept-mesh.js';
import { DEFAULT_SEGMENTS } from './grid.js';
import { withBodies, type Kernel } from './kernel.js';
import type { Solid } from './model.js';
import { SurfaceTable } from './surface-table.js';
import type { TaggedForm } from './tagged-form.js';

export interface SolidOptions {
  /** Facets in a full turn, 64 if not given; more where a radius is large. */
  readonly segments?: number;
}

export interface PartSolidOptions extends SolidOptions {
  /** Number of the last operation taken, all if not given; 0 gives the stock. */
  readonly through?: number;
}

/** The solid of a part after its operations, or after those up to `through`. */
export const solidOf = (kernel: Kernel, part: Part, options: PartSolidOptions = {}): Solid =>
  formsToSolid(kernel, stockForms(part), removedForms(part, options.through), options);

/** The forms of a part's stock, tagged `stock`. */
export const stockForms = (part: Part): TaggedForm[] => part.stock.forms.map((form) => ({ cut: 'stock', form }));

/** The forms that a part's operations take away, in their order, up to and with operation number `through`. */
export const removedForms = (part: Part, through = Infinity): TaggedForm[] =>
  part.operations
    .filter((operation) => operation.number <= through)
    .flatMap((operation) => operation.cuts)
    .flatMap((cut) => cut.forms.map((form) => ({ cut: cut.id, form })));

/**
 * The union of the stock's forms less all that is removed. Throws RangeError when a form is not a proper body (an open
 * or clockwise outline, no height, an outline across its axis) or when there is no stock.
 */
export function formsToSolid(
  kernel: Kernel,
  stock: readonly TaggedForm[],
  removed: readonly TaggedForm[],
  options: SolidOptions = {},
): Solid {
  if (stock.length === 0) throw new RangeError('a solid needs at least one form of stock');
  const segments = options.segments ?? DEFAULT_SEGMENTS;
  const memo = new Map<string, SweptMesh>();
  const unbounded = { centre: [0, 0, 0], size: 1 } as const;
  const bounded = stock.filter((item) => item.form.kind !== 'half-space');
  const reach = reachOf(
    meshesOf(kernel, bounded.map((item) => item.form), segments, unbounded, memo).map((mesh) => mesh.positions),
  );
  const mesh = (items: readonly TaggedForm[]) =>
    meshesOf(kernel, items.map((item) => item.form), segments, reach, memo);
  const table = new SurfaceTable(reach.size);
  return withBodies((keep) => {
    const filled = bodiesOf(kernel, stock, mesh(stock), table, false, keep);
    const taken = bodiesOf(kernel, removed, mesh(removed), table, true, keep);
    const { Manifold } = kernel.booleans;
    const [first] = filled;
    const whole = filled.length === 1 && first !== undefined ? first : keep(Manifold.union(filled));
    // Plain cutters first: that is half the work of all at once, for round cutters then meet less.
    const plain = taken.filter((body) => body.numTri() <= PLAIN);
    const round = taken.filter((body) => body.numTri() > PLAIN);
    const left = [plain, round].reduce(
      (body, cutters) => (cutters.length === 0 ? body : keep(Manifold.difference([body, ...cutters]))),
      whole,
    );
    return solidOfBody(left, table);
  });
}

/** A cutter with no more facets than this is plain. */
const PLAIN = 40;
