import type { Curve2 } from '../../geometry/curve.js';
import type { ArcSidesSize, ArcSlotSize } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import { seenArc, type SeenArc } from '../say/arc-items.js';
import type { ViewPlan } from '../views/plan.js';
import { house } from './house.js';

interface MiddleLine extends SeenArc {
  readonly radius: number;
  /** Half the width of what it runs along. */
  readonly half: number;
}

/**
 * The middle lines of slots and bands along an arc that a view shows in true shape, a little longer than these; paper mm.
 * A slot and the band that it lies in share one line.
 */
export function arcLines(part: Part, plan: ViewPlan, scale: number): readonly Curve2[] {
  const lines = part.operations.flatMap(({ cuts }) => cuts.flatMap(({ sizes }) => sizes.flatMap((size) => (size.kind === 'arc-slot' || size.kind === 'arc-sides' ? (middleLine(plan, size) ?? []) : []))));
  return lines.filter((line, i) => !lines.some((other, j) => j !== i && holds(other, line) && (!holds(line, other) || j < i))).map(({ centre, radius, from, to, half }) => {
    const over = ((half * scale + house.centreOverrun) / (radius * scale)) * (180 / Math.PI);
    return { kind: 'arc', centre: [centre[0] * scale, centre[1] * scale], radius: radius * scale, start: from - over, sweep: to - from + 2 * over };
  });
}

function middleLine(plan: ViewPlan, size: ArcSlotSize | ArcSidesSize): MiddleLine | undefined {
  const arc = seenArc(plan, size);
  const [radius, half] = size.kind === 'arc-slot' ? [size.radius.value, size.width.value / 2] : [(size.inner + size.outer) / 2, (size.outer - size.inner) / 2];
  const seen = arc !== undefined && plan.view.curves.some(({ geometry, visible }) => visible && geometry.kind === 'arc' && Math.abs(geometry.radius - radius - half) < 1e-5 && Math.hypot(geometry.centre[0] - arc.centre[0], geometry.centre[1] - arc.centre[1]) < 1e-4);
  return seen ? { ...arc, radius, half } : undefined;
}

/** True where one middle line runs along another and beyond both its ends, or just as far. */
const holds = (long: MiddleLine, short: MiddleLine): boolean =>
  Math.abs(long.radius - short.radius) < 1e-5 && Math.hypot(long.centre[0] - short.centre[0], long.centre[1] - short.centre[1]) < 1e-4 && long.from <= short.from + 1e-9 && long.to >= short.to - 1e-9;
