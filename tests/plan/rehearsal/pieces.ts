import type { Part } from '../../../engine/part/part.js';
import type { Kernel } from '../../../engine/solid/kernel.js';
import { regionOf } from '../../../engine/plan/rehearsal/region.js';
import { testPieceOf, type TestPiece } from '../../../engine/plan/rehearsal/piece.js';
import { statesOf } from '../../../engine/plan/states/state.js';

/** The test piece of every operation of a part that cuts something, each by itself. */
export function everyPiece(kernel: Kernel, part: Part): readonly TestPiece[] {
  const states = statesOf(kernel, part);
  return states
    .filter((state) => regionOf(kernel, part, state) !== undefined)
    .map(({ operation }) => testPieceOf(kernel, part, { rehearse: [operation.number] }, undefined, states));
}
