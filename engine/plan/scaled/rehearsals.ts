import type { Part } from '../../part/part.js';
import { handsOfPart } from '../../solid/hands-of-part.js';
import type { Kernel } from '../../solid/kernel.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import { planOf } from '../plan.js';
import { runsOf } from '../runs.js';
import type { Stake } from '../stakes/stake.js';
import { stakesOf } from '../stakes/stakes-of.js';
import { statesOf } from '../states/state.js';

/** What stands at stake in an operation at both sizes, hours, and whether a test piece is worth it. */
export interface RehearsalChange {
  readonly operation: number;
  readonly title: string;
  readonly before: StakeAt;
  readonly after: StakeAt;
  readonly verdict: 'still worth it' | 'no longer worth it' | 'worth it now';
}

export interface StakeAt {
  readonly chance: number;
  readonly hoursAtStake: number;
  readonly rehearsalHours: number;
  readonly worth: boolean;
}

/** What stands at stake in every operation of a part. */
export function stakesAlone(kernel: Kernel, part: Part, unit: LengthUnit, shop: Shop | undefined): readonly Stake[] {
  const states = statesOf(kernel, part);
  const befores = runsOf(part).map(({ operations }) => states.find(({ operation }) => operation.number === operations[0]!.number)!.before);
  const { makers } = handsOfPart(kernel, part);
  return stakesOf({ part, states, plan: planOf(part, unit, shop, befores), shop, unit, makers });
}

/** The operations that are worth a rehearsal at either size. */
export function rehearsalChanges(part: Part, before: readonly Stake[], after: readonly Stake[]): readonly RehearsalChange[] {
  const at = ({ chance, atStakeWithAlike, rehearsalCost, worthRehearsing }: Stake): StakeAt => ({ chance, hoursAtStake: atStakeWithAlike, rehearsalHours: rehearsalCost, worth: worthRehearsing });
  return after.flatMap((now): readonly RehearsalChange[] => {
    const was = before.find(({ operation }) => operation === now.operation);
    if (was === undefined || (!was.worthRehearsing && !now.worthRehearsing)) return [];
    const verdict = now.worthRehearsing ? (was.worthRehearsing ? 'still worth it' : 'worth it now') : 'no longer worth it';
    return [{ operation: now.operation, title: part.operations.find(({ number }) => number === now.operation)?.title ?? '', before: at(was), after: at(now), verdict }];
  });
}
