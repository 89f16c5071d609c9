import type { Drawing, DrawingSheet } from '../sheet/drawing.js';
import { decimal } from './decimal.js';
import { inkSheet } from './strokes.js';
import { putLayer } from './svg-ink.js';
import { pointWriter } from './svg-path.js';
import { styleSheet } from './svg-style.js';
import { openSvg } from './svg-window.js';

/** What the drawing says of all its sheets. */
export type DrawingMeta = Pick<Drawing, 'title' | 'subject' | 'keywords'>;

/**
 * One sheet as an SVG file: true size in millimetres, a group for each view, table or block and in it one for each layer, every broken line cut
 * into its dashes, real text in an embedded font. The same sheet gives the same bytes.
 * Rejects with RangeError for a curve that is not well formed and for text that can't be lettered.
 */
export async function drawingToSvg(sheet: DrawingSheet, meta: DrawingMeta): Promise<string> {
  const ink = inkSheet(sheet);
  const [width, height] = [decimal(ink.size[0]), decimal(ink.size[1])];
  const page = await openSvg({ width: `${width}mm`, height: `${height}mm`, viewBox: `0 0 ${width} ${height}` });
  const { root } = page;
  root.add('title', {}, meta.title === ink.title ? meta.title : `${meta.title}: ${ink.title}`);
  root.add('desc', {}, meta.subject);
  root.add('metadata', {}, meta.keywords.join(', '));
  root.add('style', {}, await styleSheet(ink));
  root.add('rect', { class: 'paper', width, height, fill: '#ffffff' });
  const point = pointWriter(ink.size[1]);
  ink.groups.forEach((group, index) => {
    const node = root.add('g', { id: `group-${index + 1}`, class: 'group', 'data-name': group.name });
    node.add('title', {}, group.name);
    for (const layer of group.layers) putLayer(node, layer, point);
  });
  return `<?xml version="1.0" encoding="UTF-8"?>\n${page.text()}\n`;
}
