import type { Curve2 } from '../../geometry/curve.js';
import type { Part } from '../../part/part.js';
import { seenArc } from '../say/arc-items.js';
import { circleAt } from '../views/marks.js';
import type { ViewPlan } from '../views/plan.js';
import { house } from './house.js';

/** The middle lines of slots along an arc that a view shows in true shape, a little longer than the slot; paper mm. */
export function arcLines(part: Part, plan: ViewPlan, scale: number): readonly Curve2[] {
  return part.operations.flatMap((operation) =>
    operation.cuts.flatMap((cut) =>
      cut.sizes.flatMap((size): readonly Curve2[] => {
        if (size.kind !== 'arc-slot') return [];
        const arc = seenArc(plan, size);
        if (arc === undefined) return [];
        const radius = size.radius.value * scale;
        const end = (angle: number): readonly [number, number] => [arc.centre[0] + size.radius.value * Math.cos((angle * Math.PI) / 180), arc.centre[1] + size.radius.value * Math.sin((angle * Math.PI) / 180)];
        if (circleAt(plan.view.curves, end(arc.from), [size.width.value / 2]) === undefined) return [];
        const over = (((size.width.value / 2) * scale + house.centreOverrun) / radius) * (180 / Math.PI);
        return [{ kind: 'arc', centre: [arc.centre[0] * scale, arc.centre[1] * scale], radius, start: arc.from - over, sweep: arc.to - arc.from + 2 * over }];
      }),
    ),
  );
}
