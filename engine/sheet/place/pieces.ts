import { widthAfter } from '../../lettering/index.js';
import type { Vector2 } from '../../geometry/vector.js';
import type { FillItem, Item, LineRole, StrokeItem, TextItem } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import { house } from './house.js';

export const stroke = (group: string, role: LineRole, from: Vector2, to: Vector2, about?: string): StrokeItem => ({
  kind: 'stroke',
  group,
  role,
  curve: { kind: 'line', from, to },
  ...(about === undefined ? {} : { about }),
});

/** A filled arrowhead with its point at `tip`, pointing the way of `angle` degrees. */
export function arrowhead(group: string, role: LineRole, tip: Vector2, angle: number, about?: string): FillItem {
  const radians = (angle * Math.PI) / 180;
  const [c, s] = [Math.cos(radians), Math.sin(radians)];
  const back: Vector2 = [tip[0] - house.arrow * c, tip[1] - house.arrow * s];
  const half = house.arrowWidth / 2;
  return {
    kind: 'fill',
    group,
    role,
    shape: { kind: 'polygon', points: [tip, [back[0] - half * s, back[1] + half * c], [back[0] + half * s, back[1] - half * c]] },
    ...(about === undefined ? {} : { about }),
  };
}

export const dot = (group: string, role: LineRole, centre: Vector2, diameter: number): FillItem => ({
  kind: 'fill',
  group,
  role,
  shape: { kind: 'disc', centre, radius: diameter / 2 },
});

export function lettering(
  group: string,
  use: string,
  at: Vector2,
  text: string,
  options: { readonly height?: number; readonly angle?: number; readonly anchor?: TextItem['anchor']; readonly style?: TextItem['style']; readonly about?: string } = {},
): TextItem {
  return {
    kind: 'text',
    group,
    use,
    at,
    text,
    height: options.height ?? house.height,
    angle: options.angle ?? 0,
    anchor: options.anchor ?? 'left',
    style: options.style ?? 'normal',
    ...(options.about === undefined ? {} : { about: options.about }),
  };
}

export const textWidth = (text: string, height: number = house.height, style: TextItem['style'] = 'normal'): number =>
  widthAfter(0, text, height, style);

/** The box that a line of lettering fills, with clear space round it; upright or turned by 90 degrees. */
export function textBox(item: TextItem, clear: number = house.textClear): PaperBox {
  const width = textWidth(item.text, item.height, item.style);
  const start = item.anchor === 'left' ? 0 : item.anchor === 'middle' ? -width / 2 : -width;
  const descent = 0.25 * item.height;
  const [x, y] = item.at;
  if (item.angle === 90)
    return { left: x - item.height - clear, right: x + descent + clear, bottom: y + start - clear, top: y + start + width + clear };
  return { left: x + start - clear, right: x + start + width + clear, bottom: y - descent - clear, top: y + item.height + clear };
}

/** Items moved by a vector. */
export function movedItems(items: readonly Item[], by: Vector2): readonly Item[] {
  const move = (p: Vector2): Vector2 => [p[0] + by[0], p[1] + by[1]];
  return items.map((item): Item => {
    if (item.kind === 'text') return { ...item, at: move(item.at) };
    if (item.kind === 'fill')
      return item.shape.kind === 'disc'
        ? { ...item, shape: { ...item.shape, centre: move(item.shape.centre) } }
        : { ...item, shape: { ...item.shape, points: item.shape.points.map(move) } };
    const { curve } = item;
    if (curve.kind === 'line') return { ...item, curve: { ...curve, from: move(curve.from), to: move(curve.to) } };
    if (curve.kind === 'spline') return { ...item, curve: { ...curve, points: curve.points.map(move) } };
    return { ...item, curve: { ...curve, centre: move(curve.centre) } };
  });
}
