import { vectorOf } from '../../part/author/directions.js';
import type { AngleSize, RadiusSize } from '../../part/cut.js';
import { cross, dot, scale, add, type Vector2, type Vector3 } from '../../geometry/vector.js';
import { parallel } from '../views/axes-of-part.js';
import { alongPaper } from '../views/marks.js';
import type { ViewPlan } from '../views/plan.js';
import type { PrintItem, Target } from './item.js';
import { angleText, countText, limitsOf, sizeText, type Speech } from './texts.js';
import { ringPoints } from './turned-items.js';

const paperPoint = (plan: ViewPlan, point: Vector3): Vector2 => [alongPaper(point, plan.right), alongPaper(point, plan.up)];
const paperAngle = (vector: Vector2): number => (Math.atan2(vector[1], vector[0]) * 180) / Math.PI;

/** A radius: leader to the arc, aimed at its centre, in the view that shows the arc. */
export function radiusItem(size: RadiusSize, speech: Speech): PrintItem {
  const count = size.ring === undefined ? size.centres.length : 1;
  return {
    id: `radius ${size.cut} ${size.radius.value.toFixed(4)}`,
    about: size.cut,
    // The width of a slot says the radius of its full-round ends.
    lines: [size.full === true ? `${countText(count)}full R` : `${countText(count)}${sizeText(size.radius, speech, 'R')}`],
    record:
      size.full === true
        ? { kind: 'note', feature: size.cut, count, measure: 'note' }
        : { kind: 'radius', feature: size.cut, nominal: size.radius.value, count, measure: 'length', ...limitsOf(size.radius) },
    find: (plan) => {
      const targets = size.ring === undefined ? flatTargets(plan, size) : ringTargets(plan, size, size.ring);
      return targets.length === 0 ? undefined : { kind: 'leader', cost: plan.section === undefined ? 0 : 0.5, targets };
    },
  };
}

function flatTargets(plan: ViewPlan, size: RadiusSize): readonly Target[] {
  if (size.axis === undefined || !parallel(size.axis, vectorOf(plan.eye))) return [];
  const within = size.within ?? 40;
  return size.centres.flatMap((centre, i) => {
    const at = paperPoint(plan, centre);
    if (!arcSeen(plan, at, size.radius.value)) return [];
    const toward = paperAngle(paperPoint(plan, size.toward[i]!));
    return [{ at, radius: size.radius.value, arc: [toward - within, toward + within] as const, end: 'arrow' as const }];
  });
}

function ringTargets(plan: ViewPlan, size: RadiusSize, ring: NonNullable<RadiusSize['ring']>): readonly Target[] {
  return ringPoints(plan, ring).flatMap((centre) => {
    const out = dot(cross(ring.axis, vectorOf(plan.eye)), add(centre, scale(ring.point, -1))) > 0 ? 1 : -1;
    const at = paperPoint(plan, centre);
    if (!arcSeen(plan, at, size.radius.value)) return [];
    const outward = scale(cross(ring.axis, vectorOf(plan.eye)), out * ring.towardOut);
    const toward = paperAngle(paperPoint(plan, add(outward, scale(ring.axis, ring.towardAlong))));
    return [{ at, radius: size.radius.value, arc: [toward - 40, toward + 40] as const, end: 'arrow' as const }];
  });
}

const arcSeen = (plan: ViewPlan, at: Vector2, radius: number): boolean =>
  plan.view.curves.some(
    ({ geometry, visible }) =>
      visible &&
      geometry.kind === 'arc' &&
      Math.abs(geometry.radius - radius) < 1e-5 &&
      Math.hypot(geometry.centre[0] - at[0], geometry.centre[1] - at[1]) < 1e-4,
  );

/** An angle, in the view square to its plane. */
export function angleItem(size: AngleSize): PrintItem {
  return {
    id: `angle ${size.cut}`,
    about: size.cut,
    lines: [angleText(size.degrees)],
    record: { kind: 'angle', feature: size.cut, nominal: size.degrees, measure: 'angle' },
    find: (plan) => {
      const eye = vectorOf(plan.eye);
      if (Math.abs(dot(size.a, eye)) > 1e-9 || Math.abs(dot(size.b, eye)) > 1e-9) return undefined;
      const corner = paperPoint(plan, size.corner);
      const a = paperAngle(paperPoint(plan, size.a));
      const b = paperAngle(paperPoint(plan, size.b));
      const cost = plan.section === undefined ? 0 : 0.6;
      if (size.included === true) return { kind: 'angle', cost, corner, from: a - size.degrees / 2, to: a + size.degrees / 2 };
      if (!plan.view.curves.some((curve) => curve.visible && onLine(curve.geometry, corner, size.degrees, a, b))) return undefined;
      const turn = ((((b - a) % 360) + 540) % 360) - 180;
      return turn >= 0 ? { kind: 'angle', cost, corner, from: a, to: a + turn } : { kind: 'angle', cost, corner, from: a + turn, to: a };
    },
  };
}

/** True for a straight line from the corner along either leg. */
function onLine(curve: { readonly kind: string; readonly from?: Vector2; readonly to?: Vector2 }, corner: Vector2, _degrees: number, a: number, b: number): boolean {
  if (curve.kind !== 'line' || curve.from === undefined || curve.to === undefined) return false;
  const [near, far] = Math.hypot(curve.from[0] - corner[0], curve.from[1] - corner[1]) < 1e-4 ? [curve.from, curve.to] : [curve.to, curve.from];
  if (Math.hypot(near[0] - corner[0], near[1] - corner[1]) > 1e-4) return false;
  const angle = paperAngle([far[0] - near[0], far[1] - near[1]]);
  return [a, b].some((leg) => Math.abs(((((angle - leg) % 360) + 540) % 360) - 180) < 1e-3);
}
