import type { Orientation, Paper } from '../../../templates/paper.js';
import type { PaperBox } from '../frame-box.js';
import { drawingArea } from '../frame-paper.js';
import type { Column } from './flow.js';

/** Clear of the frame, whose centring marks reach 5 mm inward. */
const inset = 6;
const gap = 8;
/** Clear over the title block, and over the bar to check the printer by. */
const overFoot = 4;

/** The columns that tables fill: one on an upright sheet, two on a wide one, each down to what is `taken` at the foot under it. */
export function columnsOn(paper: Paper, orientation: Orientation, taken: readonly PaperBox[]): readonly Column[] {
  const area = drawingArea(paper, orientation);
  const whole = area.right - area.left - 2 * inset;
  const count = whole > 320 ? 2 : 1;
  const width = (whole - gap * (count - 1)) / count;
  const foot = taken.filter(({ top }) => top < (area.bottom + area.top) / 2);
  return Array.from({ length: count }, (_, i) => {
    const left = area.left + inset + i * (width + gap);
    const right = left + width;
    const under = foot.filter((box) => box.left < right && box.right > left);
    return { left, right, top: area.top - inset, bottom: Math.max(area.bottom + inset, ...under.map(({ top }) => top + overFoot)) };
  });
}
