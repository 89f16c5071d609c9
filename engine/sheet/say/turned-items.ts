import { axisOf, indexOf, senseOf, vectorOf } from '../../part/author/directions.js';
import type { CentreHoleSize, ChamferSize, DiameterSize, ExternalThreadSize } from '../../part/cut.js';
import { cross, dot, scale, add, unit, subtract, type Vector2, type Vector3 } from '../../geometry/vector.js';
import { parallel } from '../views/axes-of-part.js';
import { alongPaper, type Mark } from '../views/marks.js';
import type { ViewPlan } from '../views/plan.js';
import { extremesOf } from './extremes.js';
import type { Home, PrintItem, Target } from './item.js';
import { angleText, limitsOf, signs, sizeLines, sizeText, type Speech } from './texts.js';

const same = 1e-5;

const paperPoint = (plan: ViewPlan, point: Vector3): Vector2 => [alongPaper(point, plan.right), alongPaper(point, plan.up)];

/** Which way an axis lies on the paper of a view, or undefined where it is not in its plane. */
function liesAlong(plan: ViewPlan, direction: Vector3): 'right' | 'up' | undefined {
  if (parallel(direction, vectorOf(plan.right))) return 'right';
  if (parallel(direction, vectorOf(plan.up))) return 'up';
  return undefined;
}

/** A turned diameter: across the lengthwise view where an end lies free, else by a leader to its outline. */
export function diameterItem(size: DiameterSize, speech: Speech): PrintItem {
  const lines = sizeLines(size.diameter, speech, signs.diameter);
  return {
    id: `diameter ${size.cut} ${lines[0]!}`,
    about: size.cut,
    lines,
    record: { kind: 'diameter', feature: size.cut, nominal: size.diameter.value, measure: 'length', ...limitsOf(size.diameter) },
    find: (plan) => diameterHome(plan, size),
  };
}

function diameterHome(plan: ViewPlan, size: DiameterSize): Home | undefined {
  const along = liesAlong(plan, unit(subtract(size.to, size.from)));
  if (along === undefined) return undefined;
  const acrossDirection = along === 'right' ? plan.up : plan.right;
  const axis = axisOf(acrossDirection);
  const centre = alongPaper(size.from, acrossDirection);
  const radius = size.diameter.value / 2;
  const ends = [alongPaper(size.from, plan[along]), alongPaper(size.to, plan[along])].sort((a, b) => a - b) as [number, number];
  const outlines = (coordinate: number): Mark[] =>
    plan.marks.filter(
      (mark) =>
        mark.axis === axis &&
        Math.abs(mark.value * senseOf(acrossDirection) - coordinate) < same &&
        mark.high > ends[0] + same &&
        mark.low < ends[1] - same,
    );
  const low = outlines(centre - radius);
  const high = outlines(centre + radius);
  if (low.length === 0 && high.length === 0) return undefined;
  if (low.length === 0 || high.length === 0) return size.internal ? oneSided(along, low.length > 0 ? low : high, low.length > 0 ? centre - radius : centre + radius) : undefined;
  // The outline may have been cut shorter by later work than it was turned.
  const left: readonly [number, number] = [
    Math.max(ends[0], Math.min(...high.map((mark) => mark.low))),
    Math.min(ends[1], Math.max(...high.map((mark) => mark.high))),
  ];
  const free = freeSide(plan, along, centre, radius, left);
  const cost = plan.section === undefined || size.internal ? 0 : 0.8;
  const targets: Target[] = [0.5, 0.3, 0.7].flatMap((share) =>
    [centre + radius, centre - radius].map((coordinate): Target => {
      const place = left[0] + (left[1] - left[0]) * share;
      return { at: along === 'right' ? [place, coordinate] : [coordinate, place], radius: 0, end: 'arrow' };
    }),
  );
  if (free === undefined) return { kind: 'leader', cost: cost + 0.5, targets };
  return {
    kind: 'linear',
    cost,
    measured: along === 'right' ? 'up' : 'right',
    low: centre - radius,
    high: centre + radius,
    lowMarks: low,
    highMarks: high,
    side: free,
    instead: targets,
  };
}

/** An inner diameter of which a half section shows one side: a leader to it. */
function oneSided(along: 'right' | 'up', marks: readonly Mark[], coordinate: number): Home {
  const longest = [...marks].sort((a, b) => b.high - b.low - (a.high - a.low))[0]!;
  return {
    kind: 'leader',
    cost: 0.5,
    targets: [0.5, 0.3, 0.7].map((share): Target => {
      const place = longest.low + (longest.high - longest.low) * share;
      return { at: along === 'right' ? [place, coordinate] : [coordinate, place], radius: 0, end: 'arrow' };
    }),
  };
}

/** The end of the view beyond which nothing stands higher than the diameter, so that it can be measured over there. */
function freeSide(
  plan: ViewPlan,
  along: 'right' | 'up',
  centre: number,
  radius: number,
  ends: readonly [number, number],
): 'left' | 'right' | 'below' | 'above' | undefined {
  const [a, b] = along === 'right' ? ([0, 1] as const) : ([1, 0] as const);
  let before = true;
  let after = true;
  for (const curve of plan.view.curves) {
    if (!curve.visible) continue;
    for (const point of extremesOf(curve.geometry)) {
      if (Math.abs(point[b] - centre) <= radius + same) continue;
      if (point[a] < ends[0] - same) before = false;
      if (point[a] > ends[1] + same) after = false;
    }
  }
  const { low, high } = plan.view.box;
  // Of two free ends the nearer one keeps the extension lines short.
  if (after && (!before || high[a] - ends[1] <= ends[0] - low[a])) return along === 'right' ? 'right' : 'above';
  if (before) return along === 'right' ? 'left' : 'below';
  return undefined;
}

/** The points of a ring that stand highest and lowest in a view across the axis. */
export function ringPoints(plan: ViewPlan, ring: { readonly point: Vector3; readonly axis: Vector3; readonly radius: number }): readonly Vector3[] {
  if (liesAlong(plan, ring.axis) === undefined) return [];
  const across = cross(ring.axis, vectorOf(plan.eye));
  return [add(ring.point, scale(across, ring.radius)), add(ring.point, scale(across, -ring.radius))];
}

const onCurves = (plan: ViewPlan, point: Vector2): boolean =>
  plan.view.curves.some((curve) => curve.visible && extremesOf(curve.geometry).some((end) => Math.hypot(end[0] - point[0], end[1] - point[1]) < 3));

export function chamferItem(size: ChamferSize, speech: Speech): PrintItem {
  return {
    id: `chamfer ${size.cut}`,
    about: size.cut,
    lines: size.face === undefined ? [`${sizeText(size.leg, speech)} x ${angleText(size.angle)}`] : [`${angleText(size.face.angle)} to ${sizeText(size.face.diameter, speech, signs.diameter)}`],
    record: { kind: 'chamfer', feature: size.cut, nominal: (size.face?.diameter ?? size.leg).value, measure: 'length', ...limitsOf(size.face?.diameter ?? size.leg) },
    find: (plan) => {
      if (size.internal && plan.section === undefined) return undefined;
      const half = size.internal ? plan.section?.half : undefined;
      // Of a half section only one side shows the inside.
      const inside = (point: Vector3): boolean => half === undefined || (point[indexOf(axisOf(half.side))] - half.axis) * senseOf(half.side) > 0;
      const points = ringPoints(plan, size.ring).filter(inside).map((point) => paperPoint(plan, point)).filter((point) => onCurves(plan, point));
      if (points.length === 0) return undefined;
      return { kind: 'leader', cost: plan.section === undefined ? 0 : 0.5, targets: points.map((at) => ({ at, radius: 0, end: 'arrow' })) };
    },
  };
}

export function externalThreadItem(size: ExternalThreadSize): PrintItem {
  const name = `${size.thread.designation}${size.thread.class === undefined ? '' : `-${size.thread.class}`}`;
  return {
    id: `thread ${size.cut}`,
    about: size.cut,
    lines: [name],
    record: { kind: 'thread', feature: size.cut, nominal: size.thread.major, measure: 'length' },
    find: (plan) => {
      const along = unit(subtract(size.to, size.from));
      const middle = scale(add(size.from, size.to), 0.5);
      const points = ringPoints(plan, { point: middle, axis: along, radius: size.thread.major / 2 });
      if (points.length === 0) return undefined;
      return { kind: 'leader', cost: 0, targets: points.map((point) => ({ at: paperPoint(plan, point), radius: 0, end: 'arrow' })) };
    },
  };
}

export function centreHoleItem(size: CentreHoleSize, speech: Speech): PrintItem {
  return {
    id: `centre ${size.cut}`,
    about: size.cut,
    lines: [size.designation, sizeText({ value: size.outside, purpose: 'size' }, speech, signs.diameter)],
    record: { kind: 'centre hole', feature: size.cut, nominal: size.outside, measure: 'length' },
    find: (plan) => {
      if (Math.abs(dot(size.direction, vectorOf(plan.eye))) > 1e-9) return undefined;
      return { kind: 'leader', cost: plan.section === undefined ? 0 : 0.5, targets: [{ at: paperPoint(plan, size.point), radius: 0, end: 'arrow' }] };
    },
  };
}
