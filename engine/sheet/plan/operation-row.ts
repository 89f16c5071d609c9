import type { Vector2 } from '../../geometry/vector.js';
import type { Phrase } from '../../part/cut.js';
import type { Operation } from '../../part/part.js';
import type { Reading } from '../../plan/bench/readings.js';
import type { Finding } from '../../plan/finding.js';
import type { Stop } from '../../plan/order/stops.js';
import type { OperationPlan, RunPlan } from '../../plan/plan.js';
import type { Item } from '../drawing.js';
import { balloonDiameter } from '../operations/balloons.js';
import { cutterLines, speedLines } from '../operations/operation-strips.js';
import { piecesOf, stack, type Piece } from '../operations/set-blocks.js';
import type { Strip } from '../operations/strips.js';
import { house } from '../place/house.js';
import { lettering, movedItems, stroke, textWidth } from '../place/pieces.js';
import { phraseText, type Speech } from '../say/texts.js';
import type { OperationPicture } from './picture/operation-picture.js';
import { readingPiece } from './reading-lines.js';
import { boxItems } from './tick-box.js';
import { group, labelledWords, markedSentence, type Labelled } from './words.js';

/** All that the row of an operation says. */
export interface RowContents {
  readonly run: RunPlan;
  readonly operation: Operation;
  readonly plan: OperationPlan;
  readonly picture: OperationPicture;
  /** What is made to hold the work, in words. */
  readonly fixture?: string | undefined;
  /** How the work stands in what holds it. */
  readonly pack: Phrase;
  readonly readings: readonly Reading[];
  readonly findings: readonly Finding[];
  readonly stops: readonly Stop[];
  readonly cautions: readonly string[];
  /** True for the first operation of a stretch in one set-up: the others find the work held and zero set. */
  readonly first: boolean;
}

const pad = 1.5;
const headHeight = balloonDiameter + 2;
const titleHeight = 5;
/** A row's first strip is no higher than this, what follows of it no higher than that; mm. */
const [highest, highestAfter] = [215, 90];

const machineNames = { lathe: 'lathe', mill: 'mill', drill: 'drilling machine', bench: 'bench' } as const;
const gravity = { fatal: 'FATAL: ', warning: 'Mind: ', remark: '' } as const;

/** The row of one operation, with its picture; in more than one strip where it has much to say. */
export function operationRow(contents: RowContents, speech: Speech, width: number, pictureWidth: number): readonly Strip[] {
  const { operation, picture } = contents;
  const about = `operation ${operation.number}`;
  const room = width - 2 * pad;
  const words = labelledWords(besideOf(contents, speech), width - pictureWidth - 2 * pad, about);
  const upper = Math.max(words.height, picture.height) + 2 * pad;
  const left = Math.max(pad, (pictureWidth - picture.width) / 2);
  const head: Item[] = [
    ...headOf(operation, contents.run, width),
    stroke(group, 'table', [0, -headHeight], [width, -headHeight]),
    stroke(group, 'table', [pictureWidth, -headHeight], [pictureWidth, -headHeight - upper]),
    ...movedItems(picture.items, [left, -headHeight - (upper - picture.height) / 2]),
    ...movedItems(words.items, [pictureWidth + pad, -headHeight - pad]),
  ];
  let rest = [...belowOf(contents, speech, room, about)];
  const strips: Strip[] = [];
  do {
    const above = strips.length === 0 ? headHeight + upper : 0;
    let [height, count] = [0, 0];
    while (count < rest.length && (height + rest[count]!.height + above <= (above > 0 ? highest : highestAfter) || (count === 0 && above === 0))) height += rest[count++]!.height;
    const lower = stack(rest.slice(0, count));
    rest = rest.slice(count);
    const whole = above + (lower.height === 0 ? 0 : lower.height + 2 * pad);
    const items = [
      ...boxItems(group, 'table', [0, 0], width, whole),
      ...(above === 0 ? [] : head),
      ...(above > 0 && lower.height > 0 ? [stroke(group, 'table', [0, -above], [width, -above])] : []),
      ...movedItems(lower.items, [pad, -above - pad]),
    ];
    strips.push({ items, height: whole, withNext: false, operation: operation.number });
  } while (rest.length > 0);
  // A row's end keeps clear of the next row.
  return strips.map((strip, i) => (i === strips.length - 1 ? { ...strip, height: strip.height + 3 } : strip));
}

function headOf({ number, title }: Operation, { setUp }: RunPlan, width: number): readonly Item[] {
  const about = `operation ${number}`;
  const centre: Vector2 = [pad + balloonDiameter / 2, -headHeight / 2];
  const machine = `Set-up ${setUp.id}, ${machineNames[setUp.machine]}`;
  const tick = 6;
  const done = 'done';
  const right = width - pad - tick - 1 - textWidth(done) - 6;
  const roomy = textWidth(title, titleHeight, 'bold') <= right - textWidth(machine) - 4 - (2 * pad + balloonDiameter + 2);
  const base = -(headHeight + house.height) / 2;
  return [
    { kind: 'stroke', group, role: 'table', curve: { kind: 'arc', centre, radius: balloonDiameter / 2, start: 0, sweep: 360 }, about },
    lettering(group, 'balloon', [centre[0], centre[1] - house.height / 2], String(number), { anchor: 'middle', style: 'bold', about }),
    lettering(group, 'table', [2 * pad + balloonDiameter + 2, roomy ? -(headHeight + titleHeight) / 2 : base], title, { height: roomy ? titleHeight : house.height, style: 'bold', about }),
    lettering(group, 'table', [right, base], machine, { anchor: 'right', about }),
    lettering(group, 'table', [width - pad - tick - 1, base], done, { anchor: 'right', about }),
    ...boxItems(group, 'table', [width - pad - tick, -(headHeight - tick) / 2], tick, tick, about),
  ];
}

const plain = (texts: readonly string[]): Labelled['lines'] => texts.filter((text) => text !== '').map((text) => ({ text }));

/** Beside the picture: hold, pack, set zero, cutter, speed. What the operation before has set is not said again. */
function besideOf({ run, operation, plan, picture, pack, fixture, first }: RowContents, speech: Speech): readonly Labelled[] {
  const zero = run.zero.map((sentence) => sentence.replace(/^Zero \(marked 0\): /, ''));
  const machined = run.setUp.machine !== 'bench';
  const packing = phraseText(pack, speech);
  return [
    { label: 'Hold', lines: plain(first ? [`${run.setUp.holding}.`, ...(fixture === undefined ? [] : [`Fixture: ${fixture}.`])] : ['as it is.']) },
    ...(machined ? [{ label: 'Pack', lines: plain([first ? (packing !== '' ? packing : /parallel|packing|plate|bush/i.test(run.setUp.holding) ? 'as said under Hold.' : 'nothing to pack.') : 'as it is.']) }] : []),
    ...(machined ? [{ label: 'Set zero', lines: plain(zero.length === 0 ? ['none needed.'] : first ? zero : [`as it is: ${zero[0]!}`]) }] : []),
    { label: 'Cutter', lines: plain([...cutterLines(operation, plan).map(({ text }) => text), ...(picture.cutterFrom === undefined ? [] : [`It comes ${picture.cutterFrom}.`])]) },
    { label: 'Speed', lines: plan.cutters.flatMap((each) => speedLines(each, plan.cutters.length > 1)).map(({ text, bold }) => ({ text, strong: bold === true })) },
  ];
}

/** Under the picture: cut and measure. */
function underOf({ operation, plan }: RowContents, speech: Speech): readonly Labelled[] {
  return [
    { label: 'Cut', lines: plain([...plan.instructions.map((phrase) => `${phraseText(phrase, speech)}.`), ...(operation.leave === undefined ? [] : [`Leave ${phraseText(operation.leave, speech)}.`])]) },
    { label: 'Measure', lines: plain(operation.check === undefined ? [] : [`${phraseText(operation.check, speech)}.`]) },
  ];
}

/** What stands under picture and words: settings, readings with their sums, what is lacking or to be minded, and where to stop. */
function belowOf(contents: RowContents, speech: Speech, width: number, about: string): readonly Piece[] {
  const { run, plan, readings, findings, stops, cautions, first } = contents;
  const [cut, measure] = underOf(contents, speech).map((each) => labelledWords([each], width, about));
  const edges = first && run.pickUp !== undefined ? piecesOf(run.pickUp, width, about) : [];
  const of = (when: Stop['when']): readonly Piece[] => stops.filter((stop) => stop.when === when).map((stop) => stopPiece(stop, speech, width, about));
  const order = ['fatal', 'warning', 'remark'] as const;
  const sorted = order.flatMap((each) => findings.filter((finding) => finding.gravity === each));
  return [
    ...of('before'),
    cut!,
    ...edges,
    ...plan.blocks.flatMap((block) => piecesOf(block, width, about)),
    measure!,
    ...readings.map((reading) => readingPiece(reading, speech, width, about)),
    ...plan.lacks.map(({ toGet, instead }) => markedSentence('\u2013', `Not in the shop: ${toGet}; ${instead}.`, width, about)),
    ...sorted.map((finding) => markedSentence(finding.gravity === 'remark' ? '\u2013' : '\u25b2', `${gravity[finding.gravity]}${phraseText(finding.sentence, speech)}`, width, about, finding.gravity === 'fatal')),
    ...cautions.map((caution) => markedSentence('\u25b2', caution, width, about)),
    ...of('after'),
  ];
}

/** A point at which to stop, in a bold frame, with a box to sign. */
function stopPiece(stop: Stop, speech: Speech, width: number, about: string): Piece {
  const inner = 2;
  const text = markedSentence('', `STOP${stop.kind === 'measure' ? '' : stop.when === 'before' ? ' before this cut' : ' after this cut'}. ${phraseText(stop.words, speech)}.`, width - 2 * inner + 4, about, true);
  const height = text.height + 2 * inner;
  return { items: [...boxItems(group, 'frame', [0.5, -1], width - 1, height, about), ...movedItems(text.items, [inner - 4, -1 - inner])], height: height + 2.5 };
}
