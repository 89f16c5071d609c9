import type { Vector2 } from '../geometry/vector.js';
import type { LetterStyle, LineRole, StrokeItem, TextItem } from './drawing.js';

/** A straight stroke. */
export const lineItem = (group: string, role: LineRole, from: Vector2, to: Vector2): StrokeItem => ({
  kind: 'stroke',
  group,
  role,
  curve: { kind: 'line', from, to },
});

/** A full circle. */
export const circleItem = (group: string, role: LineRole, centre: Vector2, radius: number): StrokeItem => ({
  kind: 'stroke',
  group,
  role,
  curve: { kind: 'arc', centre, radius, start: 0, sweep: 360 },
});

/** Upright lettering of a frame or a title block. */
export function letteringItem(
  group: string,
  text: string,
  at: Vector2,
  height: number,
  options: { readonly anchor?: TextItem['anchor']; readonly style?: LetterStyle; readonly use?: string; readonly about?: string } = {},
): TextItem {
  const { anchor = 'left', style = 'normal', use = 'title', about } = options;
  return { kind: 'text', group, text, at, height, angle: 0, anchor, style, use, ...(about === undefined ? {} : { about }) };
}
