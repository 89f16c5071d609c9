import { vectorOf } from '../../part/author/directions.js';
import type { ArcSidesSize, ArcSlotSize } from '../../part/cut.js';
import type { Vector2, Vector3 } from '../../geometry/vector.js';
import { parallel } from '../views/axes-of-part.js';
import { alongPaper } from '../views/marks.js';
import type { ViewPlan } from '../views/plan.js';
import type { PrintItem, Target } from './item.js';
import { limitsOf, sizeText, type Speech } from './texts.js';

/** An arc as a view shows it in true shape: its centre on paper and from which angle to which it runs, degrees. */
export interface SeenArc {
  readonly centre: Vector2;
  readonly from: number;
  readonly to: number;
}

/** Throws nothing; undefined where the view does not look along the arc's axis. */
export function seenArc(plan: Pick<ViewPlan, 'right' | 'up' | 'eye'>, size: ArcSlotSize | ArcSidesSize): SeenArc | undefined {
  if (!parallel(size.axis, vectorOf(plan.eye))) return undefined;
  const paper = (point: Vector3): Vector2 => [alongPaper(point, plan.right), alongPaper(point, plan.up)];
  const centre = paper(size.centre);
  const [a, b] = size.ends.map((end) => {
    const at = paper(end);
    return (Math.atan2(at[1] - centre[1], at[0] - centre[0]) * 180) / Math.PI;
  }) as [number, number];
  const turn = ((((b - a) % 360) + 540) % 360) - 180;
  return turn >= 0 ? { centre, from: a, to: a + turn } : { centre, from: a + turn, to: a };
}

/** True where the view shows a piece of an arc with that radius about that centre, as a visible edge. */
const shows = (plan: ViewPlan, centre: Vector2, radius: number): boolean =>
  plan.view.curves.some(
    ({ geometry, visible }) => visible && geometry.kind === 'arc' && Math.abs(geometry.radius - radius) < 1e-5 && Math.hypot(geometry.centre[0] - centre[0], geometry.centre[1] - centre[1]) < 1e-4,
  );

const onArc = ({ centre }: SeenArc, radius: number, angle: number): Vector2 => [
  centre[0] + radius * Math.cos((angle * Math.PI) / 180),
  centre[1] + radius * Math.sin((angle * Math.PI) / 180),
];

/** A slot along an arc: the radius of its middle line with the line on which the centre lies, and its width at a rounded end. */
export function arcSlotItems(size: ArcSlotSize, texture: number | undefined, speech: Speech): readonly PrintItem[] {
  const { radius, width, cut } = size;
  const half = width.value / 2;
  const seen = (plan: ViewPlan): SeenArc | undefined => {
    const arc = seenArc(plan, size);
    return arc !== undefined && shows(plan, arc.centre, radius.value + half) ? arc : undefined;
  };
  const cost = (plan: ViewPlan): number => (plan.section === undefined ? 0 : 0.5);
  return [
    {
      id: `arc ${cut} radius`,
      about: cut,
      lines: [sizeText(radius, speech, 'R'), `middle of slot${size.also === undefined ? '' : ` and ${size.also}`};`, `centre on ${size.line}`],
      record: { kind: 'radius', feature: cut, nominal: radius.value, measure: 'length', ...limitsOf(radius) },
      find: (plan) => {
        const arc = seen(plan);
        return arc === undefined ? undefined : { kind: 'far-radius', cost: cost(plan), centre: arc.centre, radius: radius.value, from: arc.from, to: arc.to };
      },
    },
    {
      id: `arc ${cut} width`,
      about: cut,
      lines: [`slot ${sizeText(width, speech)}`, `wide${size.through ? ' THRU' : ''}, ends full R`, ...(texture === undefined ? [] : [`walls Ra ${texture}`])],
      record: { kind: 'width', feature: cut, nominal: width.value, measure: 'length', ...limitsOf(width) },
      find: (plan) => {
        const arc = seen(plan);
        if (arc === undefined) return undefined;
        const targets = ([[arc.to, 90], [arc.from, -90]] as const).map(([angle, way]): Target => {
          const toward = angle + way;
          return { at: onArc(arc, radius.value, angle), radius: half, arc: [toward - 60, toward + 60], end: 'arrow' };
        });
        return { kind: 'leader', cost: cost(plan), targets };
      },
    },
  ];
}

/** Where along a side an arrow may point, as shares of its length: clear of the middle, where lines of symmetry run. */
const places = [0.25, 0.75, 0.4, 0.6, 0.12, 0.88];

/** The sides of a band along an arc: no number of their own, only on what centre they lie. */
export function arcSidesItem(size: ArcSidesSize): PrintItem {
  return {
    id: `sides ${size.cut}`,
    about: size.cut,
    lines: [`sides concentric with ${size.concentricWith},`, 'tangent to ends'],
    record: { kind: 'note', feature: size.cut, measure: 'note' },
    find: (plan) => {
      const arc = seenArc(plan, size);
      if (arc === undefined || !shows(plan, arc.centre, size.outer)) return undefined;
      const targets = places.map((share): Target => ({ at: onArc(arc, size.outer, arc.from + share * (arc.to - arc.from)), radius: 0, end: 'arrow' }));
      return { kind: 'leader', cost: plan.section === undefined ? 0 : 0.5, targets };
    },
  };
}
