import type { Phrase } from '../../part/cut.js';
import { roundedText } from '../../units/rounding.js';
import type { Risk, Stake } from './stake.js';

const hours = (value: number): string => `${roundedText(value, value < 0.1 ? 2 : 1)} h`;
const percent = (chance: number): string => `${roundedText(100 * chance, 100 * chance < 1 ? 1 : 0)} %`;
const numbers = (list: readonly number[]): string => (list.length === 1 ? `operation ${list[0]}` : `operations ${list.join(', ')}`);

/** A risk with its chance, what makes it so here, and where the chance comes from. */
export const riskSentence = ({ kind, chance, because, source }: Risk): Phrase => [`${kind}, ${percent(chance)} (${source}): `, ...because];

function verdict({ notRehearsed, rehearsedWith, worthRehearsing }: Stake): string {
  if (notRehearsed !== undefined) return notRehearsed;
  if (rehearsedWith !== undefined) return `the same cut as at operation ${rehearsedWith}, whose rehearsal serves it`;
  return worthRehearsing ? 'worth a rehearsal' : 'not worth one by hours alone';
}

/** What stands at stake and what a rehearsal costs: the sum with all its terms, both sides, and what follows. */
function sumSentence(stake: Stake): Phrase {
  const { chance, hoursSoFar, hoursHere, materialHours, atStake, atStakeWithAlike, alike, rehearsalCost } = stake;
  const lost = `${percent(chance)} x (${hours(hoursSoFar)} before + ${hours(hoursHere)} here + ${hours(materialHours)} of material) = ${hours(atStake)} at stake`;
  const served = alike.length === 0 ? '' : `, ${hours(atStakeWithAlike)} with ${numbers(alike)} alike`;
  return [`${lost}${served}; a rehearsal costs ${hours(rehearsalCost)}: ${verdict(stake)}`];
}

/** The stake of one operation in sentences: the sum first, then each risk. Without risk: one sentence. */
export function stakeSentences(stake: Stake): readonly Phrase[] {
  if (stake.risks.length === 0) return [[`${stake.notRehearsed ?? 'nothing at stake'}; ${hours(stake.hoursSoFar)} before, ${hours(stake.hoursHere)} here`]];
  return [sumSentence(stake), ...stake.risks.map(riskSentence)];
}
