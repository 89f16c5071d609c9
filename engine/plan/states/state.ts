import type { Operation, Part, SetUp } from '../../part/part.js';
import { stockForms, formsToSolid, type SolidOptions } from '../../solid/build.js';
import { cutSolid } from '../../solid/combine.js';
import type { Kernel } from '../../solid/kernel.js';
import { volumeOf } from '../../solid/measure.js';
import type { Solid } from '../../solid/model.js';
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

/**
 * Follows the work from its stock through all its operations. An operation that takes no metal (a thread, which is drawn
 * and not cut in the solid) leaves the solid as it was.
 */
export function statesOf(kernel: Kernel, part: Part, options: SolidOptions = {}): readonly OperationState[] {
  let work = formsToSolid(kernel, stockForms(part), [], options);
  return part.operations.map((operation) => {
    const before = work;
    const forms = formsOfOperation(operation);
    if (forms.length > 0) work = cutSolid(kernel, before, forms, options);
    const setUp = part.setUps.find(({ id }) => id === operation.setUp)!;
    return { operation, setUp, before, after: work, removed: work === before ? 0 : volumeOf(before) - volumeOf(work) };
  });
}
