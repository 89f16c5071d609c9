import type { Vector2 } from '../geometry/vector.js';
import type { Item } from './drawing.js';
import { circleItem, lineItem } from './frame-items.js';

/** Width of the projection symbol without its centre lines' overrun, as a multiple of its height h: cone 2, gap 1, circles 2. */
export const projectionSymbolWidth = 5;

/**
 * The symbol of the projection method about `centre`, in the manner of ISO 5456-2 (proportions from memory): a truncated cone with its
 * small end to the left, ends `h` and `2h` high, `2h` long, and its view from the left, two circles of diameters `h` and `2h`, which stands to the
 * left in third angle and to the right in first angle.
 */
export function projectionSymbol(group: string, centre: Vector2, h: number, angle: 'third' | 'first'): readonly Item[] {
  const [x, y] = centre;
  const half = (projectionSymbolWidth * h) / 2;
  const circlesAt = angle === 'third' ? x - half + h : x + half - h;
  const coneFrom = angle === 'third' ? x + half - 2 * h : x - half;
  const coneTo = coneFrom + 2 * h;
  const overrun = 0.4 * h;
  return [
    circleItem(group, 'symbol', [circlesAt, y], h / 2),
    circleItem(group, 'symbol', [circlesAt, y], h),
    lineItem(group, 'symbol', [coneFrom, y - h / 2], [coneFrom, y + h / 2]),
    lineItem(group, 'symbol', [coneFrom, y + h / 2], [coneTo, y + h]),
    lineItem(group, 'symbol', [coneTo, y + h], [coneTo, y - h]),
    lineItem(group, 'symbol', [coneTo, y - h], [coneFrom, y - h / 2]),
    lineItem(group, 'centre', [coneFrom - overrun, y], [coneTo + overrun, y]),
    lineItem(group, 'centre', [circlesAt - h - overrun, y], [circlesAt + h + overrun, y]),
    lineItem(group, 'centre', [circlesAt, y - h - overrun], [circlesAt, y + h + overrun]),
  ];
}
