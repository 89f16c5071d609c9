import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import type { ViewPlan } from '../views/plan.js';
import { closed } from '../views/breaks.js';
import { stroke } from './pieces.js';

/** Zigzag of a break line: beyond the outline, and the size of the zigzag; paper mm (house values). */
const over = 2.5;
const zig = 1.6;

/** The two break lines where the middle of a long shaft is left out (ISO 128-2, narrow continuous with zigzag). */
export function breakLines(plan: ViewPlan, scale: number): readonly Item[] {
  const { gap } = plan;
  if (gap === undefined) return [];
  const [bottom, top] = [plan.view.box.low[1] * scale - over, plan.view.box.high[1] * scale + over];
  const middle = (bottom + top) / 2;
  return [gap.from, gap.to].flatMap((u) => {
    const x = closed(gap, u) * scale;
    const points: readonly Vector2[] = [
      [x, bottom],
      [x, middle - zig],
      [x - zig, middle - zig / 2],
      [x + zig, middle + zig / 2],
      [x, middle + zig],
      [x, top],
    ];
    return points.slice(1).map((point, i) => stroke(plan.id, 'break', points[i]!, point));
  });
}
