import { mirrorPart } from '../../part/mirror.js';
import type { Operation, Part, SetUp } from '../../part/part.js';
import { stockForms, formsToSolid, type SolidOptions } from '../../solid/build.js';
import { cutSolid } from '../../solid/combine.js';
import type { Kernel } from '../../solid/kernel.js';
import { volumeOf } from '../../solid/measure.js';
import { DEFAULT_SEGMENTS } from '../../solid/grid.js';
import type { Solid } from '../../solid/model.js';
import { reflectSolid } from '../../solid/reflect.js';
import type { TaggedForm } from '../../solid/tagged-form.js';

/** The work before and after one operation. */
export interface OperationState {
  readonly operation: Operation;
  readonly setUp: SetUp;
  readonly before: Solid;
  readonly after: Solid;
  /** Volume that the operation takes away, mm3, as the facets have it. */
  readonly removed: number;
}

/** The forms that an operation takes away, each with the id of its cut. */
export const formsOfOperation = (operation: Operation): TaggedForm[] =>
  operation.cuts.flatMap((cut) => cut.forms.map((form) => ({ cut: cut.id, form })));

const known = new WeakMap<Part, Map<number, readonly OperationState[]>>();

/**
 * Follows the work from its stock through all its operations. An operation that takes no metal (a thread, which is drawn
 * and not cut in the solid) leaves the solid as it was. Done once for each part; the left hand has the mirror images.
 */
export function statesOf(kernel: Kernel, part: Part, options: SolidOptions = {}): readonly OperationState[] {
  const bySegments = known.get(part) ?? new Map<number, readonly OperationState[]>();
  known.set(part, bySegments);
  const segments = options.segments ?? DEFAULT_SEGMENTS;
  const states = bySegments.get(segments) ?? (part.hand === 'left' ? statesOf(kernel, mirrorPart(part), options).map((state) => reflected(state, part)) : follow(kernel, part, options));
  bySegments.set(segments, states);
  return states;
}

/** A state as the part of the other hand has it. */
function reflected(state: OperationState, part: Part): OperationState {
  const image = (solid: Solid): Solid => reflectSolid(solid, part.handAxis);
  const operation = part.operations.find(({ number }) => number === state.operation.number)!;
  return { ...state, operation, setUp: part.setUps.find(({ id }) => id === operation.setUp)!, before: image(state.before), after: image(state.after) };
}

function follow(kernel: Kernel, part: Part, options: SolidOptions): readonly OperationState[] {
  let work = formsToSolid(kernel, stockForms(part), [], options);
  return part.operations.map((operation) => {
    const before = work;
    const forms = formsOfOperation(operation);
    if (forms.length > 0) work = cutSolid(kernel, before, forms, options);
    const setUp = part.setUps.find(({ id }) => id === operation.setUp)!;
    return { operation, setUp, before, after: work, removed: work === before ? 0 : volumeOf(before) - volumeOf(work) };
  });
}
