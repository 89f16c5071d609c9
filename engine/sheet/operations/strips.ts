import { wrapText } from '../../lettering/index.js';
import type { SetUp } from '../../part/part.js';
import type { SettingBlock } from '../../plan/setting.js';
import type { Item } from '../drawing.js';
import { house } from '../place/house.js';
import { lettering, movedItems, stroke } from '../place/pieces.js';
import { cells, columns } from './columns-of-table.js';
import { piecesOf, stack, tableWidth } from './set-blocks.js';

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
const group = 'operations';

/** The row of column headings. */
export function headingStrip(width: number): Strip {
  const height = house.height + 2 * pad + 1;
  const lefts = cells(width).map(({ left }) => left);
  const texts = lefts.map((left, i) => lettering(group, 'table', [left + pad, -pad - 2.5 - 0.5], columns[i]!.heading, { height: 2.5, style: 'bold' }));
  const lines = [
    ...[...lefts, width].map((x) => stroke(group, 'table', [x, 0], [x, -height])),
    ...[0, -height].map((y) => stroke(group, 'table', [0, y], [width, y])),
  ];
  return { items: [...lines, ...texts], height, withNext: true };
}

/** What stands at the head of a set-up: its name, how the work is held, where zero is, where its edges are, and its picture. */
export function setUpStrip(
  setUp: SetUp,
  lines: readonly string[],
  edges: SettingBlock | undefined,
  picture: { readonly items: readonly Item[]; readonly width: number; readonly height: number },
  width: number,
): Strip {
  const gap = 4;
  const room = width - picture.width - gap;
  const title = { items: [lettering(group, 'note', [0, -5 - 2], `Set-up ${setUp.id}`, { height: 5, style: 'bold' })], height: 10 };
  const about = `set-up ${setUp.id}`;
  const words = [title, ...piecesOf({ kind: 'lines', lines }, room, about)];
  const narrow = edges !== undefined && tableWidth(edges) <= room;
  const beside = stack([...words, ...(narrow ? [{ items: [], height: 1 }, ...piecesOf(edges, room, about)] : [])]);
  const upper = Math.max(beside.height + 2, picture.height + 3);
  const under = edges === undefined || narrow ? { items: [], height: 0 } : stack(piecesOf(edges, width, about));
  return {
    items: [...beside.items, ...movedItems(picture.items, [width - picture.width, 0]), ...movedItems(under.items, [0, -upper])],
    height: upper + (under.height === 0 ? 0 : under.height + 1),
    withNext: true,
  };
}

/** A heading with paragraphs and a table under it, over the whole width. */
export function noteStrips(heading: string, blocks: readonly SettingBlock[], width: number, together: boolean): readonly Strip[] {
  const title = { items: [lettering(group, 'note', [0, -house.height - 1], heading, { style: 'bold' })], height: house.linePitch + 1 };
  const pieces = blocks.flatMap((block) => piecesOf(block, width, 'shop'));
  const strips = [title, ...pieces].map(({ items, height }, i): Strip => ({ items, height, withNext: i === 0 || (together && i < pieces.length) }));
  return strips;
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
