import type { Operation, Part } from '../../part/part.js';
import { toMachine, type MachineFrame } from '../machine-frame.js';

/** Threads on the outside that were cut before an operation and lie between two places along the spindle. */
export const threadsThere = (part: Part, operation: Operation, frame: MachineFrame, [low, high]: readonly [number, number]): readonly string[] =>
  part.operations
    .filter(({ number }) => number < operation.number)
    .flatMap(({ cuts }) => cuts.flatMap(({ sizes }) => sizes))
    .flatMap((size) => {
      if (size.kind !== 'external-thread') return [];
      const [a, b] = [toMachine(frame, size.from)[2], toMachine(frame, size.to)[2]].sort((x, y) => x - y) as [number, number];
      return Math.min(b, high) - Math.max(a, low) > 0.1 ? [size.thread.designation] : [];
    });
