import { length, subtract } from '../../../geometry/vector.js';
import type { ExternalThreadSize, InternalThreadSize } from '../../../part/cut.js';
import { handlingMinutes, screwCutting, thinTap } from '../../data/handling.js';
import type { OperationFacts } from '../facts.js';
import { places } from './holes.js';

/** So many turns before the full thread begins: the lead of a tap or die. */
const lead = 3;

/** Tapping by hand: the start, then a turn forward and half a turn back, in no more than some of the holes. */
export function tappingMinutes({ operation }: OperationFacts, most: number): number {
  const one = (major: number, turns: number): number => handlingMinutes.tapStart + (major < thinTap ? 2 : 1) * handlingMinutes.tapTurn * (turns + lead);
  return operation.cuts.flatMap(({ sizes }) => sizes).reduce((minutes, size) => {
    if (size.kind === 'tapping') return minutes + places(size.points, most) * one(size.thread.major, (size.depth?.value ?? 2 * size.thread.major) / size.thread.pitch);
    if (size.kind === 'internal-thread' && size.method === 'tap') return minutes + one(size.thread.major, turnsOf(size));
    return minutes;
  }, 0);
}

const turnsOf = ({ from, to, thread }: InternalThreadSize | ExternalThreadSize): number => length(subtract(to, from)) / thread.pitch;

/** A die by hand: the start, then a turn forward and half a turn back. */
export const threadingMinutes = ({ operation }: OperationFacts): number =>
  operation.cuts.flatMap(({ sizes }) => sizes).reduce((minutes, size) => (size.kind === 'external-thread' ? minutes + handlingMinutes.dieStart + handlingMinutes.dieTurn * (turnsOf(size) + lead) : minutes), 0);

/** Screw-cutting in a bore: light passes to the depth of the thread, some more without depth, each run out and back. */
export const screwCuttingMinutes = ({ operation }: OperationFacts): number =>
  operation.cuts.flatMap(({ sizes }) => sizes).reduce((minutes, size) => {
    if (size.kind !== 'internal-thread' || size.method !== 'screw-cut') return minutes;
    const passes = Math.ceil((size.thread.major - size.core) / 2 / screwCutting.depth - 1e-9) + screwCutting.spring;
    return minutes + passes * (turnsOf(size) / screwCutting.turns + handlingMinutes.screwPass);
  }, 0);
