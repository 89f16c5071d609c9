import type { Phrase } from '../../part/cut.js';
import type { Account } from '../../plan/rehearsal/account.js';
import type { DepthLadder, Ladder } from '../../plan/rehearsal/ladder.js';
import type { Measure } from '../../plan/rehearsal/measures.js';
import type { TestPiece } from '../../plan/rehearsal/piece.js';
import { formatAngle } from '../../units/format.js';
import type { Part } from '../../part/part.js';
import type { PageSection } from './page-section.js';
import { trialsTable } from './trials-table.js';

/**
 * What goes with the print of a test piece: why, how like, what it shows, what to measure, and what to write down.
 * @param hand the piece of the hand that is printed.
 */
export function testPieceSections(piece: TestPiece, account: Account, handed: boolean, hand: Part): readonly PageSection[] {
  return [
    whySection(piece, account),
    {
      heading: 'What the piece shows',
      lines: [...account.proves, handed ? [`Each hand has its own piece: the cuts lie mirrored along ${piece.of.handAxis.toUpperCase()}, threads alike. The title block says which hand this one rehearses.`] : ['The piece is the same for both hands of the part: what is rehearsed has no hand.']],
      table: {
        columns: [
          { heading: 'Op.', share: piece.beside === undefined ? 0.08 : 0.18 },
          { heading: 'Room compared', share: piece.beside === undefined ? 0.2 : 0.18 },
          { heading: 'Metal differing before', share: piece.beside === undefined ? 0.26 : 0.24 },
          { heading: 'Metal differing after', share: piece.beside === undefined ? 0.26 : 0.24 },
          { heading: 'Margin alike', share: piece.beside === undefined ? 0.2 : 0.16 },
        ],
        rows: account.likeness.map(({ operation, trial, before, after, margin }) => ({
          operation,
          cells: [[piece.beside === undefined ? String(operation) : `${operation}, trial ${trial}`], [`${before.region.toFixed(0)} mm³`], [`${difference(before)} mm³`], [`${difference(after)} mm³`], [{ length: margin }]],
        })),
      },
    },
    { heading: 'What it does not show', lines: account.notProved },
    { heading: 'How it differs from the part', lines: account.differs },
    { heading: 'Trials', lines: account.trials, ...trialsTable(piece, hand) },
    ...account.ladders.flatMap((ladder) => ladderSection(piece, ladder)),
    goSection(piece, account.measures),
    foundSection(piece),
  ];
}

const difference = ({ missing, extra }: { readonly missing: number; readonly extra: number }): string => (missing + extra < 0.005 ? '0' : (missing + extra).toFixed(2));

const percent = (share: number): string => `${(100 * share).toFixed(0)} %`;
const hours = (value: number): string => `${value.toFixed(value < 1 ? 2 : 1)} h`;

function whySection({ of, rehearsed }: TestPiece, { stakes }: Account): PageSection {
  const worth = stakes.filter(({ worthRehearsing }) => worthRehearsing).length;
  return {
    heading: `Why ${rehearsed.length === 1 ? 'operation' : 'operations'} ${rehearsed.join(', ')} of the ${of.title.toLowerCase()}`,
    lines: [
      ['A rehearsal is worth it where the hours lost on average without it exceed what it costs: chance of spoiling the part x (work and material in it by then).'],
      ...(worth === stakes.length ? [] : [['Some of these operations were asked for although the reckoning does not call for a rehearsal.'] as Phrase]),
    ],
    table: {
      columns: [
        { heading: 'Op.', share: 0.07 },
        { heading: 'What can spoil the part', share: 0.4 },
        { heading: 'Chance', share: 0.1 },
        { heading: 'In it by then', share: 0.13 },
        { heading: 'Lost on average', share: 0.13 },
        { heading: 'Rehearsal costs', share: 0.17 },
      ],
      rows: stakes.map((stake) => ({
        operation: stake.operation,
        cells: [
              [[stake.operation, ...stake.alike].join(', ')],
              stake.risks.length === 0 ? ['nothing that the reckoning knows of'] : stake.risks.flatMap((risk, i): Phrase => [...(i === 0 ? [] : ['; ']), `${risk.kind} (${percent(risk.chance)}): `, ...risk.because]),
              [stake.alike.length === 0 ? percent(stake.chance) : `${percent(stake.chance)} each`],
              [hours(stake.hoursSoFar + stake.hoursHere + stake.materialHours)],
              [hours(stake.atStakeWithAlike)],
              [hours(stake.rehearsalCost)],
        ],
      })),
    },
  };
}

const trialColumns = (trials: number, share: number): readonly { readonly heading: string; readonly share: number }[] => {
  const count = Math.max(1, Math.min(3, trials));
  return Array.from({ length: count }, (_, i) => ({ heading: count === 1 ? 'Reads' : `Trial ${i + 1}`, share: share / count }));
};

/** Limits of each size: what lies between them goes. */
function goSection({ trials }: TestPiece, measures: readonly Measure[]): PageSection {
  const boxes = trialColumns(trials, 0.3);
  const figure = ({ measure }: Measure, value: number): Phrase => (measure === 'angle' ? [formatAngle(value)] : [{ length: value }]);
  return {
    heading: 'Go or no-go: measure after each rehearsed cut',
    lines: [['It goes where the reading lies between the two limits. Limits in brackets come from the general tolerance.']],
    table: {
      writing: true,
      columns: [
        { heading: 'Op.', share: 0.07 },
        { heading: 'Measure', share: 0.29 },
        { heading: 'Limits', share: 0.18 },
        { heading: 'With', share: 0.16 },
        ...boxes,
      ],
      rows: measures.map((measure) => {
        const limits: Phrase = [...figure(measure, measure.lower), ' to ', ...figure(measure, measure.upper)];
        return {
          operation: measure.operation,
          cells: [
            [String(measure.operation)],
            measure.what,
            measure.gauge !== undefined ? [measure.gauge] : measure.general ? ['(', ...limits, ')'] : limits,
            [measure.instrument],
            ...boxes.map((): Phrase => []),
          ],
        };
      }),
    },
  };
}

/** The drills that may be tried for a thread, with the thread that each leaves. */
function ladderSection(piece: TestPiece, ladder: Ladder): readonly PageSection[] {
  if (ladder.kind === 'depths') return [depthSection(ladder)];
  const { thread, rungs, operation } = ladder;
  if (rungs.length < 2) return [];
  const holes = piece.part.operations.flatMap(({ cuts }) => cuts).flatMap(({ sizes }) => sizes.flatMap((size) => (size.kind === 'tapping' && size.thread.designation === thread ? size.points : []))).length;
  const how = piece.ladder !== undefined ? 'Each has its own place: see under Trials.' : holes >= rungs.length ? `The piece has ${holes} holes for it: drill some with each.` : 'One trial for each.';
  return [
    {
      heading: `Drills to try for ${thread}, operation ${operation}`,
      lines: [[`Where the tap is tight, go to the next larger; where the thread strips, to the next smaller. ${how}`]],
      table: {
        writing: true,
        columns: [
          { heading: 'Drill', share: 0.2 },
          { heading: 'Diameter', share: 0.2 },
          { heading: 'Thread left', share: 0.2 },
          { heading: 'How the tap went, how the screw fits', share: 0.4 },
        ],
        rows: rungs.map(({ drill, percent: left, chosen }) => ({ cells: [[`${drill.name}${chosen ? ' (as drawn)' : ''}`], [{ length: drill.diameter, sign: 'diameter' }], [`${left.toFixed(0)} %`], []] })),
      },
    },
  ];
}

/** Depths that come nearer to the diameter of a conical mouth: what it reads tells how much is still to go. */
function depthSection({ name, angle, operation, rungs }: DepthLadder): PageSection {
  return {
    heading: `Depths to try for the ${name}, operation ${operation}`,
    lines: [[`Touch the ${formatAngle(angle)} point where there is no hole, or reckon from the edge of the hole; stop at the first depth, measure the mouth, and correct the zero by what it is off: depth changes by ${(0.5 / Math.tan((angle * Math.PI) / 360)).toFixed(2)} of the diameter.`]],
    table: {
      writing: true,
      columns: [
        { heading: 'Travel from the point', share: 0.22 },
        { heading: 'Mouth should be', share: 0.22 },
        { heading: 'Mouth reads', share: 0.24 },
        { heading: 'Zero off by', share: 0.32 },
      ],
      rows: rungs.map(({ travel, diameter }) => ({ cells: [[{ length: travel }], [{ length: diameter, sign: 'diameter' }], [], []] })),
    },
  };
}

/** Boxes for what was found, by the number of the part's own operation. */
function foundSection(piece: TestPiece): PageSection {
  const operations = piece.of.operations.filter(({ number }) => piece.rehearsed.includes(number));
  return {
    heading: `Settings found, for the ${piece.of.title.toLowerCase()} itself`,
    lines: [['Write down what worked, and copy it to the row of that number on the operation sheets of the part before its blank is put in the machine.']],
    table: {
      writing: true,
      columns: [
        { heading: 'Op.', share: 0.07 },
        { heading: 'Goes to', share: 0.31 },
        { heading: 'Speed, feed', share: 0.15 },
        { heading: 'Dial or read-out', share: 0.2 },
        { heading: 'Off by, so change', share: 0.27 },
      ],
      rows: operations.map(({ number, title }) => ({ operation: number, cells: [[String(number)], [`operation ${number}, ${title.charAt(0).toLowerCase()}${title.slice(1)}`], [], [], []] })),
    },
  };
}
