import type { Curve2 } from '../../geometry/curve.js';
import type { Vector2 } from '../../geometry/vector.js';
import type { Part } from '../../part/part.js';
import { extremesOf } from '../say/extremes.js';
import type { Home, Target } from '../say/item.js';
import type { ChosenViews, Housed } from './choose-views.js';
import type { Mark } from './marks.js';
import type { ViewGap, ViewPlan } from './plan.js';

/** A shaft is broken when it is so many times as long as it is thick, and so much of it is plain (house values, rule V13). */
const slender = 6;
const plainShare = 0.4;

/** Breaks the lengthwise view of a long plain turned part; all that is housed in it moves with its ends. */
export function broken(part: Part, chosen: ChosenViews): ChosenViews {
  if (part.attitude.kind !== 'turned') return chosen;
  const front = chosen.plans.find((plan) => plan.place === 'front');
  const gap = front === undefined ? undefined : gapOf(front);
  if (front === undefined || gap === undefined) return chosen;
  const plan = brokenPlan(front, gap);
  return {
    ...chosen,
    plans: chosen.plans.map((each) => (each === front ? plan : each)),
    housed: chosen.housed.map((each): Housed => (each.plan === front ? { item: each.item, plan, home: movedHome(each.home, gap) } : each)),
  };
}

/** The longest stretch in which nothing but level lines is seen, less an end of one thickness at each side. */
function gapOf(plan: ViewPlan): ViewGap | undefined {
  const { low, high } = plan.view.box;
  const [length, thickness] = [high[0] - low[0], high[1] - low[1]];
  if (length < slender * thickness) return undefined;
  const stops = new Set<number>();
  for (const { geometry } of plan.view.curves) for (const point of extremesOf(geometry)) stops.add(Math.round(point[0] * 1e4) / 1e4);
  const sorted = [...stops].sort((a, b) => a - b);
  let best: readonly [number, number] = [0, 0];
  for (let i = 0; i + 1 < sorted.length; i += 1) if (sorted[i + 1]! - sorted[i]! > best[1] - best[0]) best = [sorted[i]!, sorted[i + 1]!];
  if (best[1] - best[0] < plainShare * length) return undefined;
  const gap = { from: best[0] + thickness, to: best[1] - thickness, stays: thickness * 0.25 };
  return gap.to - gap.from > thickness ? gap : undefined;
}

/** Where a place along the paper's right stands once the gap is closed. */
export function closed(gap: ViewGap | undefined, u: number): number {
  if (gap === undefined || u <= gap.from) return u;
  const left = gap.to - gap.from - gap.stays;
  return u >= gap.to ? u - left : gap.from + ((u - gap.from) * gap.stays) / (gap.to - gap.from);
}

function brokenPlan(plan: ViewPlan, gap: ViewGap): ViewPlan {
  const shift = gap.to - gap.from - gap.stays;
  const curves = plan.view.curves.flatMap((curve) => {
    const { geometry } = curve;
    const points = extremesOf(geometry);
    if (points.every(([u]) => u <= gap.from + 1e-6)) return [curve];
    if (points.every(([u]) => u >= gap.to - 1e-6)) return [{ ...curve, geometry: moved(geometry, -shift) }];
    if (geometry.kind !== 'line') return [curve];
    const [a, b] = geometry.from[0] < geometry.to[0] ? [geometry.from, geometry.to] : [geometry.to, geometry.from];
    const at = (u: number): Vector2 => [closed(gap, u), a[1] + ((b[1] - a[1]) * (u - a[0])) / (b[0] - a[0])];
    return [
      { ...curve, geometry: { kind: 'line' as const, from: a, to: at(gap.from) } },
      { ...curve, geometry: { kind: 'line' as const, from: at(gap.to), to: [closed(gap, b[0]), b[1]] as Vector2 } },
    ];
  });
  const { low, high } = plan.view.box;
  return { ...plan, gap, view: { ...plan.view, curves, box: { low, high: [closed(gap, high[0]), high[1]] } } };
}

function moved(curve: Curve2, by: number): Curve2 {
  const move = ([x, y]: Vector2): Vector2 => [x + by, y];
  if (curve.kind === 'line') return { ...curve, from: move(curve.from), to: move(curve.to) };
  if (curve.kind === 'spline') return { ...curve, points: curve.points.map(move) };
  return { ...curve, centre: move(curve.centre) };
}

/** Targets move with their ends; what is left out can't be pointed at, unless there is nothing else. */
function movedTargets(targets: readonly Target[], gap: ViewGap): readonly Target[] {
  const stays = targets.filter(({ at: [u] }) => u < gap.from || u > gap.to);
  if (stays.length > 0) return stays.map((target) => ({ ...target, at: [closed(gap, target.at[0]), target.at[1]] }));
  return targets.map((target) => ({ ...target, at: [gap.from - gap.stays, target.at[1]] }));
}

function movedHome(home: Home, gap: ViewGap): Home {
  if (home.kind === 'leader') return { ...home, targets: movedTargets(home.targets, gap) };
  if (home.kind === 'far-radius') return { ...home, centre: [closed(gap, home.centre[0]), home.centre[1]] };
  if (home.kind === 'angle') return { ...home, corner: [closed(gap, home.corner[0]), home.corner[1]] };
  if (home.measured === 'right') return { ...home, low: closed(gap, home.low), high: closed(gap, home.high) };
  const marks = (list: readonly Mark[]): readonly Mark[] => list.map((mark) => ({ ...mark, low: closed(gap, mark.low), high: closed(gap, mark.high) }));
  const instead = home.instead === undefined ? undefined : movedTargets(home.instead, gap);
  return { ...home, lowMarks: marks(home.lowMarks), highMarks: marks(home.highMarks), ...(instead === undefined ? {} : { instead }) };
}
