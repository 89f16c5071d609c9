import { wrapText } from '../../lettering/index.js';
import type { Item } from '../drawing.js';
import { house } from '../place/house.js';
import { lettering, stroke } from '../place/pieces.js';
import type { Strip } from '../operations/strips.js';
import { phraseText, type Speech } from '../say/texts.js';
import type { PageTable } from './page-section.js';

const pad = 1.5;
const group = 'pages';
/** A row in which is written by hand is at least so high, mm. */
const writingHeight = 9;

/** The rows of a ruled table, the heading first: it is drawn again where the table goes on in another column. */
export function ruledTable(table: PageTable, speech: Speech, width: number): { readonly heading: Strip; readonly rows: readonly Strip[] } {
  const lefts = table.columns.map((_, i) => table.columns.slice(0, i).reduce((sum, { share }) => sum + share * width, 0));
  const row = (cells: readonly string[], style: 'normal' | 'bold', height: number, least: number, operation?: number): Strip => {
    const lines = cells.map((text, i) => (text === '' ? [] : wrapText(text, height, style, table.columns[i]!.share * width - 2 * pad)));
    const high = Math.max(least, Math.max(1, ...lines.map((each) => each.length)) * height * 1.5 + 2 * pad);
    const about = operation === undefined ? undefined : `operation ${operation}`;
    const items: Item[] = [
      ...[...lefts, width].map((x) => stroke(group, 'table', [x, 0], [x, -high])),
      ...[0, -high].map((y) => stroke(group, 'table', [0, y], [width, y])),
      ...lines.flatMap((each, i) => each.map((text, k) => lettering(group, 'table', [lefts[i]! + pad, -pad - height - k * height * 1.5], text, { height, style, ...(about === undefined ? {} : { about }) }))),
    ];
    return { items, height: high, withNext: false };
  };
  return {
    heading: { ...row(table.columns.map(({ heading }) => heading), 'bold', 2.5, 0), withNext: true },
    rows: table.rows.map(({ cells, operation }) => row(cells.map((cell) => phraseText(cell, speech)), 'normal', house.height, table.writing === true ? writingHeight : 0, operation)),
  };
}
