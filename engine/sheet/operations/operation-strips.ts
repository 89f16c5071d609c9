import { wrapText } from '../../lettering/index.js';
import type { Vector2 } from '../../geometry/vector.js';
import type { Operation } from '../../part/part.js';
import type { OperationPlan } from '../../plan/plan.js';
import type { CutterPlan } from '../../plan/speeds.js';
import type { Item } from '../drawing.js';
import { house } from '../place/house.js';
import { lettering, movedItems, stroke } from '../place/pieces.js';
import { phraseText, type Speech } from '../say/texts.js';
import { balloonDiameter } from './balloons.js';
import { cells, type Cell } from './columns-of-table.js';
import { piecesOf, stack, type Piece } from './set-blocks.js';
import type { Strip } from './strips.js';

const pad = 1.5;
const group = 'operations';

/** Settings higher than this go on in a row of their own, mm: it must fit under the head of a set-up. */
const highest = 90;

interface Line {
  readonly text: string;
  readonly bold?: boolean;
}

/**
 * The row of one operation: number in a balloon, what to do, cutter, speed, a blank for the reading;
 * under them what is set, left and checked. Further rows where the settings are many.
 */
export function operationStrips(operation: Operation, plan: OperationPlan, speech: Speech, width: number): readonly Strip[] {
  const [number, doing, cutter, speed, reading] = cells(width);
  const about = `operation ${operation.number}`;
  const lists: readonly (readonly [Cell, readonly Line[]])[] = [
    [doing, [{ text: operation.title, bold: true }, ...plan.instructions.map((phrase) => ({ text: phraseText(phrase, speech) }))]],
    [cutter, cutterLines(operation, plan)],
    [speed, plan.cutters.flatMap((each) => speedLines(each, plan.cutters.length > 1))],
  ];
  const top = stack([wordsOf(lists, about)]);
  const band = reading.left - doing.left - 2 * pad;
  const lacks = plan.lacks.map(({ toGet, instead }) => `Not in the shop: ${toGet}; ${instead}.`);
  const after = [
    ...(operation.leave === undefined ? [] : [`Leave ${phraseText(operation.leave, speech)}.`]),
    ...(operation.check === undefined ? [] : [`Check: ${phraseText(operation.check, speech)}.`]),
    ...lacks,
  ];
  const pieces = [...plan.blocks, { kind: 'lines' as const, lines: after }].flatMap((block) => piecesOf(block, band, about));
  const strips: Strip[] = [];
  let rest = pieces;
  do {
    const head = strips.length === 0;
    let height = 0;
    let count = 0;
    while (count < rest.length && (count === 0 || height + rest[count]!.height <= highest)) height += rest[count++]!.height;
    const settings = stack(rest.slice(0, count));
    rest = rest.slice(count);
    const words: Piece = head ? top : { items: [], height: 0 };
    strips.push(row(operation.number, words, settings, { number, doing, reading }, width, head));
  } while (rest.length > 0);
  return strips;
}

function row(number: number, words: Piece, settings: Piece, at: Readonly<Record<'number' | 'doing' | 'reading', Cell>>, width: number, head: boolean): Strip {
  const about = `operation ${number}`;
  const upper = head ? Math.max(words.height + 2 * pad, settings.height === 0 ? balloonDiameter + 2 * pad : 0) : 0;
  const lower = settings.height === 0 ? 0 : settings.height + 2 * pad;
  const height = Math.max(upper + lower, balloonDiameter + 2 * pad);
  const line = (from: Vector2, to: Vector2): Item => stroke(group, 'table', from, to);
  const inner = head ? cells(width).slice(2, 4).map(({ left }) => line([left, 0], [left, -(lower === 0 ? height : upper)])) : [];
  const centre: Vector2 = [at.number.left + at.number.width / 2, -pad - balloonDiameter / 2];
  const items: Item[] = [
    ...[0, at.doing.left, at.reading.left, width].map((x) => line([x, 0], [x, -height])),
    line([0, 0], [width, 0]),
    line([0, -height], [width, -height]),
    ...inner,
    ...(head && lower > 0 ? [line([at.doing.left, -upper], [at.reading.left, -upper])] : []),
    ...movedItems(words.items, [0, -pad]),
    ...movedItems(settings.items, [at.doing.left + pad, -upper - pad]),
    { kind: 'stroke', group, role: 'table', curve: { kind: 'arc', centre, radius: balloonDiameter / 2, start: 0, sweep: 360 }, about },
    lettering(group, 'balloon', [centre[0], centre[1] - house.height / 2], String(number), { anchor: 'middle', about }),
  ];
  return { items, height, withNext: false, operation: number };
}

function wordsOf(lists: readonly (readonly [Cell, readonly Line[]])[], about: string): Piece {
  const columns = lists.map(([cell, lines]) => ({
    cell,
    lines: lines.flatMap(({ text, bold }) => {
      const style = bold === true ? 'bold' : 'normal';
      return wrapText(text, house.height, style, cell.width - 2 * pad).map((line) => ({ line, style }) as const);
    }),
  }));
  return {
    items: columns.flatMap(({ cell, lines }) =>
      lines.map(({ line, style }, i) => lettering(group, 'table', [cell.left + pad, -house.height - i * house.linePitch], line, { style, about })),
    ),
    height: Math.max(...columns.map(({ lines }) => lines.length)) * house.linePitch,
  };
}

/** The cutters by name; the operation's own words too, where they say more than the names worked out. */
export function cutterLines(operation: Operation, { cutters }: OperationPlan): readonly Line[] {
  const names = cutters.map(({ name }) => name);
  const own = cutters.length === 1 && names[0]!.startsWith(operation.cutter.name) ? [] : [operation.cutter.name];
  return [...own, ...names].map((text) => ({ text }));
}

export function speedLines({ kind, name, speed, still, feed, remark }: CutterPlan, many: boolean): readonly Line[] {
  const turns = speed === undefined ? (still ?? '') : `${speed} a minute`;
  const which = many && kind !== 'tapping' ? [{ text: `${name.split(/ [\u2300]/)[0]!}:` }] : [];
  return [...which, ...(turns === '' ? [] : [{ text: turns, bold: true }]), ...(feed === '' ? [] : [{ text: feed }]), ...(remark === undefined ? [] : [{ text: remark }])];
}
