import { wrapText } from '../../lettering/index.js';
import type { SettingBlock } from '../../plan/setting.js';
import type { Item } from '../drawing.js';
import { house } from '../place/house.js';
import { lettering, movedItems, textWidth } from '../place/pieces.js';

/** Something that stands under what came before it and is not parted: items counted from its upper left corner. */
export interface Piece {
  readonly items: readonly Item[];
  readonly height: number;
}

const group = 'operations';
const between = 3;
const headHeight = 2.5;
const headPitch = 4.2;

/** Rows of a table that stay together. */
const rowsTogether = 12;

/** Settings in pieces of a width: each line of a sentence, and tables of at most so many rows. */
export function piecesOf(block: SettingBlock, width: number, about: string): readonly Piece[] {
  if (block.kind === 'lines')
    return block.lines.flatMap((line) => {
      const lines = wrapText(line, house.height, 'normal', width);
      return [stack(lines.map((text) => ({ items: [lettering(group, 'table', [0, -house.height], text, { about })], height: house.linePitch })))];
    });
  const natural = widthsOf(block.head, block.rows);
  const wide = widthOf(natural);
  const side = block.free && block.rows.length >= 4 ? Math.max(1, Math.min(3, Math.floor((width + 2 * between) / (wide + 2 * between)))) : 1;
  const pieces: Piece[] = [];
  for (let start = 0; start < block.rows.length; start += rowsTogether * side) {
    const rows = block.rows.slice(start, start + rowsTogether * side);
    const each = Math.ceil(rows.length / side);
    const parts = Array.from({ length: side }, (_, i) => rows.slice(i * each, (i + 1) * each)).filter((part) => part.length > 0);
    const set = parts.map((part) => tableOf(block.head, part, fitted(block.head, natural, width), about));
    pieces.push({ items: set.flatMap(({ items }, i) => movedItems(items, [i * (wide + 2 * between), 0])), height: Math.max(...set.map(({ height }) => height)) });
  }
  return pieces;
}

/** Pieces under each other as one. */
export function stack(pieces: readonly Piece[]): Piece {
  const items: Item[] = [];
  let height = 0;
  for (const piece of pieces) {
    items.push(...movedItems(piece.items, [0, -height]));
    height += piece.height;
  }
  return { items, height };
}

const widthsOf = (head: readonly string[], rows: readonly (readonly string[])[]): readonly number[] =>
  head.map((title, column) => Math.max(textWidth(title, headHeight, 'bold'), ...rows.map((row) => textWidth(row[column] ?? ''))) + 0.2);

const widthOf = (widths: readonly number[]): number => widths.reduce((sum, each) => sum + each, 0) + between * (widths.length - 1);

/** How wide a table is where nothing in it is broken, mm. */
export const tableWidth = (block: SettingBlock): number => (block.kind === 'table' ? widthOf(widthsOf(block.head, block.rows)) : 0);

/** The first column holds words and gives way where a table is too wide, down to this; then the widest of the others does. */
const leastWords = 20;

/** Widths that fit a room; none is less than its own title needs. */
function fitted(head: readonly string[], widths: readonly number[], width: number): readonly number[] {
  const excess = widthOf(widths) - width;
  if (excess <= 0) return widths;
  const least = head.map((title) => Math.max(leastWords, textWidth(title, headHeight, 'bold') + 0.2));
  const [first = 0, ...others] = widths;
  const gives = Math.min(excess, Math.max(0, first - least[0]!));
  const widest = others.indexOf(Math.max(...others));
  return [first - gives, ...others.map((each, i) => (i === widest ? Math.max(Math.min(each, least[i + 1]!), each - (excess - gives)) : each))];
}

function tableOf(head: readonly string[], rows: readonly (readonly string[])[], widths: readonly number[], about: string): Piece {
  const lefts = widths.map((_, i) => widths.slice(0, i).reduce((sum, each) => sum + each + between, 0));
  const titles = head.map((title, i) => lettering(group, 'table', [lefts[i]!, -headHeight], title, { height: headHeight, style: 'bold', about }));
  const lines = rows.map((row): Piece => {
    const cells = row.map((text, i) => wrapText(text, house.height, 'normal', widths[i]!));
    return {
      items: cells.flatMap((cell, i) => cell.map((text, k) => lettering(group, 'table', [lefts[i]!, -house.height - k * house.linePitch], text, { about }))),
      height: Math.max(...cells.map((cell) => cell.length)) * house.linePitch,
    };
  });
  return stack([{ items: titles, height: headPitch }, ...lines, { items: [], height: 1 }]);
}
