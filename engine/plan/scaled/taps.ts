import type { Part } from '../../part/part.js';
import { tapMargin, tapStrength } from '../../trade/sums/tap-torque.js';
import { findThread } from '../../trade/threads.js';
import { UserError } from '../../units/user-error.js';
import { feltTorque, leastTapMargin } from '../data/stake-limits.js';
import { diameterThere, holeSizes } from '../hole-places.js';
import { materialOf } from '../material.js';

/** What a tap of one operation stands: torque of cutting and of twisting off, N m. */
export interface TapLoad {
  readonly operation: number;
  readonly thread: string;
  readonly torqueNm: number;
  readonly strengthNm: number;
  readonly margin: number;
  /** Stronger than a hand feels, so that it is felt before it breaks. */
  readonly felt: boolean;
}

/** The taps of a part, in the order of its operations. Threads that the tables do not have are left out. */
export function tapLoads(part: Part): readonly TapLoad[] {
  const material = materialOf(part.material);
  if (material === undefined) return [];
  return part.operations.flatMap((operation) =>
    holeSizes(operation).flatMap((size): readonly TapLoad[] => {
      if (size.kind !== 'tapping') return [];
      try {
        const thread = findThread(size.thread.designation);
        const { torque, strength, margin } = tapMargin(thread, diameterThere(part, operation, size) ?? thread.minorInternal, material, 'taper');
        return [{ operation: operation.number, thread: thread.designation, torqueNm: torque, strengthNm: strength, margin, felt: tapStrength(thread) > feltTorque }];
      } catch (error) {
        if (error instanceof UserError) return [];
        throw error;
      }
    }),
  );
}

export interface TapChange {
  readonly operation: number;
  readonly before: TapLoad;
  readonly after: TapLoad;
  readonly verdict: 'becomes safe' | 'becomes risky' | 'stays safe' | 'stays risky';
}

/** Felt before it breaks, and not worked near to its strength: a coarse pitch asks much of a large tap too. */
const isSafe = ({ felt, margin }: TapLoad): boolean => felt && margin >= leastTapMargin;

/** The taps of one operation at both sizes. */
export function tapChanges(before: Part, after: Part): readonly TapChange[] {
  const [old, now] = [tapLoads(before), tapLoads(after)];
  return now.flatMap((load) => {
    const was = old.find(({ operation }) => operation === load.operation);
    if (was === undefined) return [];
    const verdict = isSafe(load) ? (isSafe(was) ? 'stays safe' : 'becomes safe') : isSafe(was) ? 'becomes risky' : 'stays risky';
    return [{ operation: load.operation, before: was, after: load, verdict }];
  });
}
