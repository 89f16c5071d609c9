import type { Part } from '../../part/part.js';
import type { Vector2 } from '../../geometry/vector.js';
import type { DrawingScale } from '../../../templates/scales.js';
import type { Home } from '../say/item.js';
import { axisMarks } from './axis-marks.js';
import type { Housed } from './choose-views.js';
import { clipToDisc } from './clip.js';
import { edgeMarks, stationsOfSurfaces } from './marks.js';
import type { ViewPlan } from './plan.js';

/** A detail: part of a view, drawn larger. */
export interface Detail {
  readonly letter: string;
  readonly parent: ViewPlan;
  readonly plan: ViewPlan;
  readonly scale: DrawingScale;
  /** On the parent, model mm. */
  readonly centre: Vector2;
  readonly radius: number;
}

/** Below this, on paper, a distance is too small to read where it stands, mm. */
const tooSmall = 2.5;
/** A detail's least distance, and its greatest radius, on paper, mm. */
const wanted = 4;
const mostRadius = 32;

/**
 * Finds what is too small to read at a scale and gives it larger details: small distances near each other share one. Returns
 * the details, and where every item is housed now.
 */
export function detailsFor(
  part: Part,
  housed: readonly Housed[],
  scale: number,
  scales: readonly DrawingScale[],
  letters: readonly string[],
): { readonly details: readonly Detail[]; readonly housed: readonly Housed[] } {
  const details: Detail[] = [];
  let now = [...housed];
  const small = housed.filter(({ home }) => home.kind === 'linear' && (home.high - home.low) * scale < tooSmall);
  const clusters: { plan: ViewPlan; members: Housed[] }[] = [];
  for (const each of small) {
    const near = clusters.find(
      ({ plan, members }) => plan === each.plan && members.every((other) => apart(placeOf(other.home), placeOf(each.home)) * scale < 12),
    );
    if (near === undefined) clusters.push({ plan: each.plan, members: [each] });
    else near.members.push(each);
  }
  for (const { plan, members } of clusters) {
    const letter = letters[details.length];
    if (letter === undefined) break;
    const detail = makeDetail(part, plan, members, scale, scales, letter);
    if (detail === undefined) continue;
    const moved = now.map((each): Housed => {
      if (each.plan !== plan) return each;
      const tiny = isTiny(each.home, scale);
      if (!members.includes(each) && !tiny) return each;
      const home = each.item.find(detail.plan);
      return home === undefined ? each : { item: each.item, plan: detail.plan, home };
    });
    if (members.some((member) => moved.find(({ item }) => item === member.item)!.plan !== detail.plan)) continue;
    details.push(detail);
    now = moved;
  }
  return { details, housed: now };
}

const apart = (a: Vector2, b: Vector2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** True for what a detail that shows it anyway should carry: a radius or chamfer hard to see at the view's own scale. */
function isTiny(home: Home, scale: number): boolean {
  return home.kind === 'leader' && home.targets.every(({ radius }) => radius > 0 && radius * scale < 1.2);
}

/** The middle of a distance in its view, where the ends of its two edges come nearest to each other. */
function placeOf(home: Home): Vector2 {
  if (home.kind === 'leader') return home.targets[0]!.at;
  if (home.kind === 'angle') return home.corner;
  if (home.kind === 'far-radius') return home.centre;
  const along = (home.low + home.high) / 2;
  const across = acrossOf(home);
  return home.measured === 'right' ? [along, across] : [across, along];
}

function acrossOf(home: Extract<Home, { kind: 'linear' }>): number {
  let best = { gap: Infinity, at: 0 };
  for (const a of home.lowMarks)
    for (const b of home.highMarks)
      for (const [p, q] of [
        [a.high, b.high],
        [a.low, b.low],
        [a.high, b.low],
        [a.low, b.high],
      ] as const) {
        const gap = Math.abs(p - q);
        if (gap < best.gap - 1e-9) best = { gap, at: (p + q) / 2 };
      }
  return best.at;
}

function makeDetail(
  part: Part,
  plan: ViewPlan,
  members: readonly Housed[],
  scale: number,
  scales: readonly DrawingScale[],
  letter: string,
): Detail | undefined {
  const places = members.map(({ home }) => placeOf(home));
  const centre: Vector2 = [
    (Math.min(...places.map((p) => p[0])) + Math.max(...places.map((p) => p[0]))) / 2,
    (Math.min(...places.map((p) => p[1])) + Math.max(...places.map((p) => p[1]))) / 2,
  ];
  let radius = 5 / scale;
  for (const { home } of members) {
    if (home.kind !== 'linear') continue;
    // Both ends of the distance lie well inside.
    const across = acrossOf(home);
    for (const end of [home.low, home.high]) {
      const point: Vector2 = home.measured === 'right' ? [end, across] : [across, end];
      radius = Math.max(radius, apart(point, centre) * 1.4 + 1 / scale);
    }
  }
  const least = Math.min(...members.map(({ home }) => (home.kind === 'linear' ? home.high - home.low : Infinity)));
  const fitting = [...scales].filter(({ factor }) => factor > scale && radius * factor <= mostRadius);
  const chosen = [...fitting].reverse().find(({ factor }) => least * factor >= wanted) ?? fitting[0];
  if (chosen === undefined) return undefined;
  const curves = plan.view.curves.flatMap((curve) =>
    clipToDisc(curve.geometry, centre, radius).map((geometry) => ({ ...curve, geometry })),
  );
  const box = {
    low: [Math.max(plan.view.box.low[0], centre[0] - radius), Math.max(plan.view.box.low[1], centre[1] - radius)] as Vector2,
    high: [Math.min(plan.view.box.high[0], centre[0] + radius), Math.min(plan.view.box.high[1], centre[1] + radius)] as Vector2,
  };
  const view = { ...plan.view, curves, box };
  const edges = edgeMarks(curves, plan.right, plan.up, stationsOfSurfaces(part, plan.solid));
  const detail: ViewPlan = {
    ...plan,
    id: `detail ${letter}`,
    title: `${letter} (${chosen.name})`,
    view,
    marks: [...edges, ...axisMarks(part, view, plan, plan.section)],
    detail: { centre, radius },
  };
  return { letter, parent: plan, plan: detail, scale: chosen, centre, radius };
}
