import type { Operation, Part, SetUp } from '../part/part.js';

/** Operations in one set-up, one after another. */
export interface Run {
  readonly setUp: SetUp;
  readonly operations: readonly Operation[];
}

/** Operations in their order, those in a row that share a set-up together. */
export function runsOf(part: Part): readonly Run[] {
  const runs: { setUp: SetUp; operations: Operation[] }[] = [];
  for (const operation of part.operations) {
    const last = runs[runs.length - 1];
    if (last !== undefined && last.setUp.id === operation.setUp) last.operations.push(operation);
    else runs.push({ setUp: part.setUps.find(({ id }) => id === operation.setUp)!, operations: [operation] });
  }
  return runs;
}
