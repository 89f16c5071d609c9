import { wrapText } from '../../lettering/index.js';
import type { Vector2 } from '../../geometry/vector.js';
import type { Operation, SetUp } from '../../part/part.js';
import type { Item } from '../drawing.js';
import { house } from '../place/house.js';
import { lettering, movedItems, stroke } from '../place/pieces.js';
import { phraseText, type Speech } from '../say/texts.js';
import { balloonDiameter } from './balloons.js';

/** A level strip of the operation sheet: items counted from its upper left corner, and its height. */
export interface Strip {
  readonly items: readonly Item[];
  readonly height: number;
  /** True when the strip must not stand last in a column. */
  readonly withNext: boolean;
  /** The operation that it is the row of. */
  readonly operation?: number;
}

const pad = 1.5;

/** Columns of the operation table as shares of its width; speed and reading are left to the pen. */
export const columns = [
  { heading: 'No.', share: 0.075 },
  { heading: 'Operation', share: 0.405 },
  { heading: 'Cutter', share: 0.17 },
  { heading: 'Leave, check', share: 0.2 },
  { heading: 'Speed', share: 0.075 },
  { heading: 'Read', share: 0.075 },
] as const;

interface Cell {
  readonly left: number;
  readonly width: number;
}

function cells(width: number): readonly Cell[] {
  let left = 0;
  return columns.map(({ share }) => {
    const cell = { left, width: share * width };
    left += cell.width;
    return cell;
  });
}

const group = 'operations';

function rules(width: number, height: number): readonly Item[] {
  const verticals = [...cells(width).map(({ left }) => left), width];
  return [
    ...verticals.map((x) => stroke(group, 'table', [x, 0], [x, -height])),
    stroke(group, 'table', [0, 0], [width, 0]),
    stroke(group, 'table', [0, -height], [width, -height]),
  ];
}

/** The row of column headings. */
export function headingStrip(width: number): Strip {
  const height = house.height + 2 * pad + 1;
  const texts = cells(width).map(({ left }, i) =>
    lettering(group, 'table', [left + pad, -pad - 2.5 - 0.5], columns[i]!.heading, { height: 2.5, style: 'bold' }),
  );
  return { items: [...rules(width, height), ...texts], height, withNext: true };
}

interface Line {
  readonly text: string;
  readonly bold: boolean;
}

/** The row of one operation: number in a balloon, what to do, cutter, what to leave and check, blanks for speed and reading. */
export function operationStrip(operation: Operation, speech: Speech, width: number): Strip {
  const [number, doing, cutter, leave] = cells(width) as [Cell, Cell, Cell, Cell, ...Cell[]];
  const wrapped = (text: string, cell: Cell, bold = false): readonly Line[] =>
    wrapText(text, house.height, bold ? 'bold' : 'normal', cell.width - 2 * pad).map((line) => ({ text: line, bold }));
  const lists: readonly (readonly [Cell, readonly Line[]])[] = [
    [doing, [...wrapped(operation.title, doing, true), ...operation.cuts.flatMap((cut) => wrapped(phraseText(cut.instruction, speech), doing))]],
    [cutter, wrapped(operation.cutter.name, cutter)],
    [
      leave,
      [
        ...(operation.leave === undefined ? [] : wrapped(`Leave ${phraseText(operation.leave, speech)}.`, leave)),
        ...(operation.check === undefined ? [] : wrapped(`Check: ${phraseText(operation.check, speech)}.`, leave)),
      ],
    ],
  ];
  const most = Math.max(...lists.map(([, lines]) => lines.length));
  const height = Math.max(balloonDiameter + 2 * pad, most * house.linePitch + 2 * pad);
  const items: Item[] = [...rules(width, height)];
  for (const [cell, lines] of lists)
    lines.forEach((line, i) => {
      items.push(
        lettering(group, 'table', [cell.left + pad, -pad - house.height - i * house.linePitch], line.text, {
          style: line.bold ? 'bold' : 'normal',
          about: `operation ${operation.number}`,
        }),
      );
    });
  const centre: Vector2 = [number.left + number.width / 2, -pad - balloonDiameter / 2];
  items.push(
    { kind: 'stroke', group, role: 'table', curve: { kind: 'arc', centre, radius: balloonDiameter / 2, start: 0, sweep: 360 }, about: `operation ${operation.number}` },
    lettering(group, 'balloon', [centre[0], centre[1] - house.height / 2], String(operation.number), { anchor: 'middle', about: `operation ${operation.number}` }),
  );
  return { items, height, withNext: false, operation: operation.number };
}

/** What stands at the head of a set-up: its name, how the work is held, which way up, where zero is, and its picture. */
export function setUpStrip(
  setUp: SetUp,
  lines: readonly string[],
  picture: { readonly items: readonly Item[]; readonly width: number; readonly height: number },
  width: number,
): Strip {
  const gap = 4;
  const textRoom = width - picture.width - gap;
  const items: Item[] = [lettering(group, 'note', [0, -5 - 2], `Set-up ${setUp.id}`, { height: 5, style: 'bold' })];
  let y = -7 - 3;
  for (const paragraph of lines)
    for (const line of wrapText(paragraph, house.height, 'normal', textRoom)) {
      y -= house.height;
      items.push(lettering(group, 'note', [0, y], line));
      y -= house.linePitch - house.height;
    }
  items.push(...movedItems(picture.items, [width - picture.width, 0]));
  return { items, height: Math.max(-y + 2, picture.height + 3), withNext: true };
}

/** Sentences under a table: cautions. */
export function cautionStrip(sentences: readonly string[], width: number): Strip {
  const items: Item[] = [];
  let y = -2;
  for (const sentence of sentences)
    wrapText(sentence, house.height, 'normal', width - 6).forEach((line, i) => {
      y -= house.height;
      if (i === 0) items.push(lettering(group, 'note', [0, y], '▲'));
      items.push(lettering(group, 'note', [6, y], line));
      y -= house.linePitch - house.height;
    });
  return { items, height: -y + 2, withNext: false };
}
