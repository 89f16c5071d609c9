import { letterHeights } from '../../templates/lettering.js';
import type { Orientation, Paper } from '../../templates/paper.js';
import { titleBlockWidth } from '../../templates/title-block.js';
import type { Item } from './drawing.js';
import { letteringItem, lineItem } from './frame-items.js';
import { drawingArea, sheetSize } from './frame-paper.js';

const group = 'Frame';
/** Width of the grid's border outside the frame; the centring marks run as far out, and as far in. */
const border = 5;
/** Length of a field of the grid. */
const field = 50;
/** A field at a corner is no shorter than this. */
const shortestField = 15;
/** Letters of the grid; I and O look like figures. */
const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/**
 * The frame of a sheet: frame line, centring marks at the middle of each side, and the grid if asked for; in the manner of ISO 5457
 * (from memory). The lower mark stops at the frame where the title block stands.
 */
export function sheetFrame(paper: Paper, orientation: Orientation, options: { readonly grid?: boolean } = {}): readonly Item[] {
  const { left, bottom, right, top } = drawingArea(paper, orientation);
  const [width, height] = sheetSize(paper, orientation);
  const [middleX, middleY] = [width / 2, height / 2];
  const underTitle = right - titleBlockWidth < middleX;
  return [
    lineItem(group, 'frame', [left, bottom], [right, bottom]),
    lineItem(group, 'frame', [right, bottom], [right, top]),
    lineItem(group, 'frame', [right, top], [left, top]),
    lineItem(group, 'frame', [left, top], [left, bottom]),
    lineItem(group, 'frame', [left - border, middleY], [left + border, middleY]),
    lineItem(group, 'frame', [right + border, middleY], [right - border, middleY]),
    lineItem(group, 'frame', [middleX, top + border], [middleX, top - border]),
    lineItem(group, 'frame', [middleX, bottom - border], [middleX, underTitle ? bottom : bottom + border]),
    ...(options.grid === true ? sheetGrid(paper, orientation) : []),
  ];
}

/** Ticks between fields along one side, counted from the sheet's middle, and the middles of the fields in order. */
function fieldsAlong(low: number, middle: number, high: number): { readonly ticks: readonly number[]; readonly middles: readonly number[] } {
  const ticks = [middle];
  for (let k = 1; middle - k * field >= low + shortestField; k += 1) ticks.unshift(middle - k * field);
  for (let k = 1; middle + k * field <= high - shortestField; k += 1) ticks.push(middle + k * field);
  const ends = [low, ...ticks, high];
  const middles = ends.slice(1).map((end, index) => (end + (ends[index] ?? low)) / 2);
  return { ticks: ticks.filter((tick) => tick !== middle), middles };
}

/** Grid references in the border: figures from left to right, letters from the top down; on A4 and Letter only along the top and the right side. */
function sheetGrid(paper: Paper, orientation: Orientation): readonly Item[] {
  const { left, bottom, right, top } = drawingArea(paper, orientation);
  const [width, height] = sheetSize(paper, orientation);
  const across = fieldsAlong(left, width / 2, right);
  const up = fieldsAlong(bottom, height / 2, top);
  const capital = letterHeights.table;
  const inset = (border - capital) / 2;
  const everySide = paper.long > 300;
  const lettering = (text: string, x: number, y: number): Item =>
    letteringItem(group, text, [x, y], capital, { anchor: 'middle', use: 'label' });
  const horizontal = (edge: number, out: 1 | -1): Item[] => [
    ...across.ticks.map((x) => lineItem(group, 'table', [x, edge], [x, edge + out * border])),
    ...across.middles.map((x, index) => lettering(`${index + 1}`, x, out > 0 ? edge + inset : edge - border + inset)),
  ];
  const vertical = (edge: number, out: 1 | -1): Item[] => [
    ...up.ticks.map((y) => lineItem(group, 'table', [edge, y], [edge + out * border, y])),
    ...up.middles.map((y, index) => lettering(letters.charAt(up.middles.length - 1 - index), edge + (out * border) / 2, y - capital / 2)),
  ];
  return [
    ...horizontal(top, 1),
    ...vertical(right, 1),
    ...(everySide ? [...horizontal(bottom, -1), ...vertical(left, -1)] : []),
  ];
}
