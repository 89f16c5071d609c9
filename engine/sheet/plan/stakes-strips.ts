import { wrapText } from '../../lettering/index.js';
import type { Part } from '../../part/part.js';
import type { Stake } from '../../plan/stakes/stake.js';
import { roundedText } from '../../units/rounding.js';
import { stack, type Piece } from '../operations/set-blocks.js';
import { noteStrips, type Strip } from '../operations/strips.js';
import { house } from '../place/house.js';
import { lettering, stroke, textWidth } from '../place/pieces.js';
import { phraseText, type Speech } from '../say/texts.js';
import { group, markedSentence } from './words.js';

const hours = (value: number): string => roundedText(value, 2);
const percent = (value: number): string => `${roundedText(100 * value, 0)} %`;

/** Operations that can spoil the work, that whose rehearsal is weighed against most first; those that it serves as well come after it. */
export const ranked = (stakes: readonly Stake[]): readonly Stake[] => {
  const weight = (stake: Stake): number => (stake.rehearsedWith === undefined ? stake.atStakeWithAlike : stake.atStake);
  return stakes.filter(({ chance }) => chance > 0).sort((a, b) => weight(b) - weight(a) || a.operation - b.operation);
};

const verdict = ({ worthRehearsing, rehearsedWith }: Stake): string => (rehearsedWith !== undefined ? `with ${rehearsedWith}` : worthRehearsing ? 'yes' : 'no');

/** Columns of figures, each ending so far from the right edge of the table, mm. */
const columns = [
  { heading: 'chance', from: 103, of: ({ chance }: Stake) => percent(chance) },
  { heading: 'work in it', from: 85, of: ({ hoursSoFar }: Stake) => hours(hoursSoFar) },
  { heading: 'here', from: 73, of: ({ hoursHere }: Stake) => hours(hoursHere) },
  { heading: 'material', from: 56, of: ({ materialHours }: Stake) => hours(materialHours) },
  { heading: 'lost', from: 45, of: ({ atStake }: Stake) => hours(atStake) },
  { heading: 'rehearsal', from: 24, of: ({ rehearsalCost }: Stake) => hours(rehearsalCost) },
  { heading: 'worth it', from: 0, of: verdict },
] as const;
const headHeight = 2.5;

/** The stakes in order, with both sides of the reckoning: what is at stake, and what a rehearsal costs. */
export function stakesStrips(part: Part, stakes: readonly Stake[], speech: Speech, width: number): readonly Strip[] {
  const list = ranked(stakes);
  if (list.length === 0) return [];
  const worth = list.filter(({ worthRehearsing }) => worthRehearsing).map(({ operation }) => operation);
  const lines = [
    'Hours. Lost = chance x (work in it + here + material): what is lost on average without a rehearsal. A rehearsal is worth it where it costs less than is lost at all operations that it serves.',
    worth.length === 0 ? 'No operation of this part is worth a rehearsal.' : `Worth a rehearsal: ${worth.join(', ')}.`,
    `Chances and limits from: ${[...new Set(list.flatMap(({ risks }) => risks.map(({ source }) => source)))].join('; ')}.`,
  ];
  const heading: Strip = {
    items: [
      ...columns.map((column) => lettering(group, 'table', [width - column.from, -headHeight - 1], column.heading, { height: headHeight, style: 'bold', anchor: 'right' })),
      lettering(group, 'table', [0, -headHeight - 1], 'Operation', { height: headHeight, style: 'bold' }),
    ],
    height: headHeight + 2.5,
    withNext: true,
  };
  const opening = noteStrips('What is at stake', [{ kind: 'lines', lines }], width, true).map((strip): Strip => ({ ...strip, withNext: true }));
  return [...opening, heading, ...list.map((stake) => stakeStrip(part, stake, speech, width))];
}

/** One operation: its figures in a line, and under it what can spoil it. */
function stakeStrip(part: Part, stake: Stake, speech: Speech, width: number): Strip {
  const about = `operation ${stake.operation}`;
  const title = `${stake.operation} ${part.operations.find(({ number }) => number === stake.operation)?.title ?? ''}`;
  const room = width - columns[0].from - textWidth('100 %') - 3;
  const named = wrapText(title, house.height, 'bold', room);
  const figures = columns.map((column) => lettering(group, 'table', [width - column.from, -1 - house.height], column.of(stake), { anchor: 'right', about }));
  const alike = stake.alike.length === 0 ? [] : [markedSentence('\u2013', `one rehearsal serves ${[stake.operation, ...stake.alike].join(', ')}: lost at all of them ${hours(stake.atStakeWithAlike)}`, width, about)];
  const risks = stake.risks.map(({ kind, chance, because }) => markedSentence('\u2013', `${kind}, ${percent(chance)}: ${phraseText(because, speech)}`, width, about));
  const head: Piece = { items: [...figures, ...named.map((line, i) => lettering(group, 'table', [0, -1 - house.height - i * house.linePitch], line, { style: 'bold', about }))], height: 1 + named.length * house.linePitch };
  const { items, height } = stack([head, ...risks, ...alike]);
  return { items: [stroke(group, 'table', [0, 0], [width, 0]), ...items], height: height + 1, withNext: false };
}
