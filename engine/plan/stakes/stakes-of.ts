import { alikeOf } from './alike.js';
import { anyOf } from './chance.js';
import { factsOf, type OperationFacts } from './facts.js';
import type { StakesInput } from './input.js';
import { rehearsalHours } from './rehearsal-cost.js';
import { riskFinders } from './risks/index.js';
import type { Stake } from './stake.js';
import { blankMaterial, blankMinutes } from './times/blank.js';
import { setUpMinutes } from './times/holding.js';
import { operationTime } from './times/operation-time.js';

/** What is known of an operation by itself, before it is set beside the others. */
type Alone = Omit<Stake, 'alike' | 'atStakeWithAlike' | 'rehearsedWith' | 'worthRehearsing'>;

/** Why an operation is not worth a test piece whatever it costs; undefined where it is a matter of hours. */
function whyNot({ operation }: OperationFacts, risks: number): string | undefined {
  if (risks === 0) return 'nothing in it is tricky';
  if (operation.cuts.length === 0) return 'it cuts nothing: try it on an offcut of the same bar';
  return undefined;
}

/**
 * What stands at stake at each operation of a part, in their order. The blank counts as work done before the first; a set-up
 * belongs whole to the first operation in it, for it is spent when that one spoils the work. One rehearsal serves all
 * operations with the very same risks: it is weighed against what is at stake in all of them, at the first.
 */
export function stakesOf(input: StakesInput): readonly Stake[] {
  const alone = eachAlone(input);
  const alike = alikeOf(alone);
  return alone.map((stake): Stake => {
    const later = alike.get(stake.operation) ?? [];
    const earlier = alone.find(({ operation }) => alike.get(operation)?.includes(stake.operation) === true);
    const atStakeWithAlike = stake.atStake + alone.filter(({ operation }) => later.includes(operation)).reduce((sum, { atStake }) => sum + atStake, 0);
    return {
      ...stake,
      alike: later,
      atStakeWithAlike,
      ...(earlier === undefined ? {} : { rehearsedWith: earlier.operation }),
      worthRehearsing: stake.notRehearsed === undefined && earlier === undefined && atStakeWithAlike > stake.rehearsalCost,
    };
  });
}

function eachAlone(input: StakesInput): readonly Alone[] {
  const all = factsOf(input);
  const first = all[0];
  if (first === undefined) return [];
  const material = blankMaterial(input.part, first.material, first.shop);
  let hoursSoFar = blankMinutes(input.part) / 60;
  return all.map((facts): Alone => {
    const inRun = all.filter(({ operation }) => facts.earlierInRun.includes(operation));
    const hoursHere = (operationTime(facts).minutes + (inRun.length === 0 ? setUpMinutes(facts) : 0)) / 60;
    const risks = riskFinders.flatMap((find) => find(facts)).sort((a, b) => b.chance - a.chance);
    const chance = anyOf(risks.map((risk) => risk.chance));
    const notRehearsed = whyNot(facts, risks.length);
    const stake: Alone = {
      operation: facts.operation.number,
      risks,
      chance,
      hoursSoFar,
      hoursHere,
      materialHours: material.hours,
      materialKilograms: material.kilograms,
      atStake: chance * (hoursSoFar + hoursHere + material.hours),
      rehearsalCost: input.costOf?.(facts.operation.number) ?? rehearsalHours(facts, inRun),
      ...(notRehearsed === undefined ? {} : { notRehearsed }),
    };
    hoursSoFar += hoursHere;
    return stake;
  });
}
