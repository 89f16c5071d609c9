import type { Part } from '../../part/part.js';
import type { Maker } from '../../solid/hand-makers.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import { UserError } from '../../units/user-error.js';
import { planOf } from '../plan.js';
import { runsOf } from '../runs.js';
import type { Stake } from '../stakes/stake.js';
import { rankedStakes, worthRehearsing } from '../stakes/rank.js';
import { stakesOf } from '../stakes/stakes-of.js';
import type { OperationState } from '../states/state.js';

/** Thrown where no operation of a part is worth a test piece, and none is asked for. */
export class NothingWorthRehearsing extends UserError {}

export interface RehearsalWishes {
  readonly unit: LengthUnit;
  readonly shop: Shop | undefined;
  readonly makers: readonly Maker[];
  /** Numbers asked for; the stakes choose if not given. */
  readonly asked: readonly number[] | undefined;
}

/**
 * Which operations of a part are rehearsed, with the stakes of all.
 * @throws UserError where an operation asked for does not exist or has nothing tricky in it; NothingWorthRehearsing where none is worth it.
 */
export function toRehearse(part: Part, states: readonly OperationState[], { unit, shop, makers, asked }: RehearsalWishes): { readonly stakes: readonly Stake[]; readonly numbers: readonly number[] } {
  const befores = [...runsOf(part).map(({ operations }) => states.find(({ operation }) => operation.number === operations[0]!.number)!.before)];
  const plan = planOf(part, unit, shop, befores);
  const stakes = stakesOf({ part, states, plan, shop, unit, makers });
  if (asked === undefined) {
    const numbers = worthRehearsing(stakes);
    if (numbers.length > 0) return { stakes, numbers };
    const [most] = rankedStakes(stakes).filter(({ notRehearsed, rehearsedWith }) => notRehearsed === undefined && rehearsedWith === undefined);
    const ask = most === undefined ? 'no operation of it has anything tricky in it' : `operation ${most.operation} comes nearest, with ${most.atStakeWithAlike.toFixed(2)} hours at stake against ${most.rehearsalCost.toFixed(2)} for its rehearsal; ask for it with --rehearse ${most.operation}`;
    throw new NothingWorthRehearsing(`no operation of the ${part.name} is worth a test piece: ${ask}`);
  }
  for (const number of asked) {
    const stake = stakes.find(({ operation }) => operation === number);
    if (stake === undefined) throw new UserError(`the ${part.name} has no operation ${number}; it has ${part.operations.map((operation) => operation.number).join(', ')}; the nearest is ${nearest(part, number)}`);
    if (stake.notRehearsed !== undefined) throw new UserError(`operation ${number} of the ${part.name} ("${titleOf(part, number)}") cannot be rehearsed: ${stake.notRehearsed}; those that can are ${stakes.filter((each) => each.notRehearsed === undefined).map(({ operation }) => operation).join(', ')}`);
  }
  return { stakes, numbers: asked };
}

const titleOf = (part: Part, number: number): string => part.operations.find((operation) => operation.number === number)?.title ?? '';

const nearest = (part: Part, number: number): number => part.operations.map((operation) => operation.number).reduce((best, other) => (Math.abs(other - number) < Math.abs(best - number) ? other : best));
