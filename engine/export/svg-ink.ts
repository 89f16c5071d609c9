import { decimal } from './decimal.js';
import type { Ink, InkFill, InkLayer, InkStroke, InkText } from './ink.js';
import { pathData, type PointWriter } from './svg-path.js';
import type { SvgNode } from './svg-window.js';

const caps = { round: 'round', square: 'butt' } as const;

const about = (ink: Ink): Readonly<Record<string, string>> => (ink.about === undefined ? {} : { 'data-about': ink.about });

/** Draws a layer as a group of its own. Most of its strokes have one width, which stands on the group. */
export function putLayer(parent: SvgNode, layer: InkLayer, point: PointWriter): void {
  const pen = layer.ink.find((ink) => ink.kind === 'stroke');
  const attributes: Record<string, string> = { class: `layer ${layer.role}`, 'data-name': layer.name };
  if (pen) Object.assign(attributes, { 'stroke-width': decimal(pen.width), 'stroke-linecap': caps[pen.ends] });
  const node = parent.add('g', attributes);
  for (const ink of layer.ink) {
    switch (ink.kind) {
      case 'stroke':
        putStroke(node, ink, point, pen);
        break;
      case 'fill':
        putFill(node, ink, point);
        break;
      case 'text':
        putText(node, ink, point);
        break;
    }
  }
}

function putStroke(node: SvgNode, ink: InkStroke, point: PointWriter, pen?: InkStroke): void {
  const attributes: Record<string, string> = { class: 'stroke', d: ink.curves.map((curve) => pathData(curve, point)).join(''), ...about(ink) };
  if (ink.width !== pen?.width) attributes['stroke-width'] = decimal(ink.width);
  if (ink.ends !== pen?.ends) attributes['stroke-linecap'] = caps[ink.ends];
  node.add('path', attributes);
}

function putFill(node: SvgNode, ink: InkFill, point: PointWriter): void {
  const { shape } = ink;
  if (shape.kind === 'polygon') {
    node.add('path', { d: `M${shape.points.map(point).join('L')}Z`, ...about(ink) });
    return;
  }
  const [cx = '', cy = ''] = point(shape.centre).split(' ');
  node.add('circle', { cx, cy, r: decimal(shape.radius), ...about(ink) });
}

/** Letters stand in pieces, each where it was measured to be; signs stand among them unseen, so that the line can be searched and copied, and are drawn beside. */
function putText(node: SvgNode, ink: InkText, point: PointWriter): void {
  const [x = '', y = ''] = point(ink.origin).split(' ');
  const turned = ink.angle === 0 ? undefined : `rotate(${decimal(-ink.angle)} ${x} ${y})`;
  const attributes = {
    x,
    y,
    'font-size': decimal(ink.size, 4),
    class: ink.use,
    ...(ink.style === 'bold' ? { 'font-weight': 'bold' } : {}),
    ...(turned === undefined ? {} : { transform: turned }),
    ...about(ink),
  };
  if (ink.signs.length === 0) {
    node.add('text', attributes, ink.text);
    return;
  }
  const text = node.add('text', attributes);
  const pieces = [...ink.letters.map((piece) => ({ ...piece, seen: true })), ...ink.signs.map((piece) => ({ ...piece, seen: false }))];
  for (const piece of pieces.sort((a, b) => a.x - b.x)) {
    text.add('tspan', { x: decimal(ink.origin[0] + piece.x), ...(piece.seen ? {} : { fill: 'none' }) }, piece.text);
  }
  for (const stroke of ink.strokes) putStroke(node, stroke, point);
}
