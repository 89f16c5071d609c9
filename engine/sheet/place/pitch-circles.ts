import type { Curve2 } from '../../geometry/curve.js';
import type { Vector2 } from '../../geometry/vector.js';
import { vectorOf } from '../../part/author/directions.js';
import type { Part } from '../../part/part.js';
import { parallel } from '../views/axes-of-part.js';
import { alongPaper, circleAt } from '../views/marks.js';
import type { ViewPlan } from '../views/plan.js';

/** The pitch circles of holes that a view shows round; paper mm. */
export function pitchCircles(part: Part, plan: ViewPlan, scale: number): readonly Curve2[] {
  const circles = new Map<string, Curve2>();
  for (const operation of part.operations)
    for (const cut of operation.cuts)
      for (const size of cut.sizes) {
        if (!('pitchCircle' in size) || size.pitchCircle === undefined || !parallel(size.direction, vectorOf(plan.eye))) continue;
        const seen = size.points.some((point) => circleAt(plan.view.curves, [alongPaper(point, plan.right), alongPaper(point, plan.up)]) !== undefined);
        if (!seen) continue;
        const { centre, diameter } = size.pitchCircle;
        const at: Vector2 = [alongPaper(centre, plan.right) * scale, alongPaper(centre, plan.up) * scale];
        circles.set(`${at.join(' ')} ${diameter.value}`, { kind: 'arc', centre: at, radius: (diameter.value / 2) * scale, start: 0, sweep: 360 });
      }
  return [...circles.values()];
}
