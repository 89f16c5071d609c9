import type { Stake } from '../../plan/stakes/stake.js';
import { roundedText } from '../../units/rounding.js';
import { noteStrips, type Strip } from '../operations/strips.js';
import { phraseText, type Speech } from '../say/texts.js';

const hours = (value: number): string => roundedText(value, 2);
const percent = (value: number): string => `${roundedText(100 * value, 0)} %`;

/** Operations that can spoil the work, that whose rehearsal is weighed against most first; those that it serves as well come after it. */
export const ranked = (stakes: readonly Stake[]): readonly Stake[] => {
  const weight = (stake: Stake): number => (stake.rehearsedWith === undefined ? stake.atStakeWithAlike : stake.atStake);
  return stakes.filter(({ chance }) => chance > 0).sort((a, b) => weight(b) - weight(a) || a.operation - b.operation);
};

const verdict = ({ worthRehearsing, rehearsedWith }: Stake): string => (rehearsedWith !== undefined ? `with ${rehearsedWith}` : worthRehearsing ? 'yes' : 'no');

/** The stakes in order, with both sides of the reckoning: what is at stake, and what a rehearsal costs. */
export function stakesStrips(stakes: readonly Stake[], speech: Speech, width: number): readonly Strip[] {
  const rows = ranked(stakes).map((stake) => [
    stake.risks.map(({ kind, chance, because }) => `${kind} ${percent(chance)}: ${phraseText(because, speech)}`).join('; '),
    String(stake.operation),
    percent(stake.chance),
    hours(stake.hoursSoFar),
    hours(stake.hoursHere),
    hours(stake.materialHours),
    stake.alike.length === 0 ? hours(stake.atStake) : `${hours(stake.atStake)}, with ${stake.alike.join(', ')}: ${hours(stake.atStakeWithAlike)}`,
    hours(stake.rehearsalCost),
    verdict(stake),
  ]);
  if (rows.length === 0) return [];
  const worth = ranked(stakes).filter(({ worthRehearsing }) => worthRehearsing).map(({ operation }) => operation);
  const lines = [
    'Lost = chance x (work in the part + this operation + material), in hours, on average. A rehearsal is worth it where more is lost without it than it costs.',
    worth.length === 0 ? 'No operation of this part is worth a rehearsal.' : `Worth a rehearsal: ${worth.join(', ')}.`,
  ];
  const sources = [...new Set(stakes.flatMap(({ risks }) => risks.map(({ source }) => source)))];
  return noteStrips(
    'What is at stake',
    [
      { kind: 'lines', lines },
      { kind: 'table', head: ['What can spoil it', 'No.', 'chance', 'work in it', 'here', 'material', 'lost', 'rehearsal', 'worth it'], rows, free: false },
      { kind: 'lines', lines: [`Chances and limits from: ${sources.join('; ')}.`] },
    ],
    width,
    false,
  );
}
