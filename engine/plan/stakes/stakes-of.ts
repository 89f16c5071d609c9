import { factsOf, type OperationFacts } from './facts.js';
import { anyOf } from './chance.js';
import type { StakesInput } from './input.js';
import { rehearsalHours } from './rehearsal-cost.js';
import { riskFinders } from './risks/index.js';
import type { Stake } from './stake.js';
import { blankMaterial, blankMinutes } from './times/blank.js';
import { setUpMinutes } from './times/holding.js';
import { operationTime } from './times/operation-time.js';

/** Why an operation is not worth a test piece whatever it costs; undefined where it is a matter of hours. */
function whyNot({ operation }: OperationFacts, risks: number): string | undefined {
  if (risks === 0) return 'nothing in it is tricky';
  if (operation.cuts.length === 0) return 'it cuts nothing: try it on an offcut of the same bar';
  return undefined;
}

/**
 * What stands at stake at each operation of a part, in their order. The blank counts as work done before the first; a set-up
 * belongs whole to the first operation in it, for it is spent when that one spoils the work.
 */
export function stakesOf(input: StakesInput): readonly Stake[] {
  const all = factsOf(input);
  const first = all[0];
  if (first === undefined) return [];
  const material = blankMaterial(input.part, first.material, first.shop);
  let hoursSoFar = blankMinutes(input.part) / 60;
  return all.map((facts): Stake => {
    const number = facts.operation.number;
    const inRun = all.filter(({ operation }) => facts.earlierInRun.includes(operation));
    const hoursHere = (operationTime(facts).minutes + (inRun.length === 0 ? setUpMinutes(facts) : 0)) / 60;
    const risks = riskFinders.flatMap((find) => find(facts)).sort((a, b) => b.chance - a.chance);
    const chance = anyOf(risks.map((risk) => risk.chance));
    const atStake = chance * (hoursSoFar + hoursHere + material.hours);
    const rehearsalCost = input.costOf?.(number) ?? rehearsalHours(facts, inRun);
    const notRehearsed = whyNot(facts, risks.length);
    const stake: Stake = {
      operation: number,
      risks,
      chance,
      hoursSoFar,
      hoursHere,
      materialHours: material.hours,
      materialKilograms: material.kilograms,
      atStake,
      rehearsalCost,
      worthRehearsing: notRehearsed === undefined && atStake > rehearsalCost,
      ...(notRehearsed === undefined ? {} : { notRehearsed }),
    };
    hoursSoFar += hoursHere;
    return stake;
  });
}
