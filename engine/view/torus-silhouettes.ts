import { add, cross, dot, length, scale, subtract, unit, type Vector3 } from '../geometry/vector.js';
import type { Surface } from '../solid/model.js';
import { offsetFrom } from '../solid/surface.js';
import { fitSpline, type Reading } from './fit-spline.js';
import { between, type Silhouette } from './silhouette-ends.js';
import type { Trace } from './silhouette-traces.js';
import { across, circleAbout, type SpaceCurve } from './space-curve.js';

type Torus = Surface & { readonly kind: 'torus' };

/** Cosines below this count as none. */
const NONE = 1e-9;

/** The eye's direction split along the axis and away from it; `side` stands square to both. */
interface Sight {
  readonly along: number;
  readonly tilt: number;
  readonly toward: Vector3;
  readonly side: Vector3;
}

function sightOf(torus: Torus, toEye: Vector3): Sight {
  const along = dot(toEye, torus.axis);
  const level = subtract(toEye, scale(torus.axis, along));
  const tilt = length(level);
  const toward = tilt < NONE ? across(torus.axis) : scale(level, 1 / tilt);
  return { along, tilt, toward, side: cross(torus.axis, toward) };
}

/** How a torus bends along the line of sight: positive where it bulges towards the outside of its tube. */
export function radialCurvature(torus: Torus, p: Vector3, toEye: Vector3): number {
  const offset = subtract(p, torus.centre);
  const away = unit(subtract(offset, scale(torus.axis, dot(offset, torus.axis))));
  const round = dot(toEye, cross(torus.axis, away));
  const cosine = dot(offsetFrom(torus, p).normal, away);
  return (1 - round * round) / torus.minor + (round * round * cosine) / (torus.major + torus.minor * cosine);
}

/**
 * The exact silhouettes along a trace on a torus: its equators seen along the axis; two circles round the tube and the
 * rims above and below seen square to the axis; else a smooth curve: at each angle round the axis the tube turns away
 * where tan(angle round the tube) = -tilt cos(angle) / along.
 */
export function torusSilhouettes(torus: Torus, trace: Trace, bounds: readonly (Surface | undefined)[], toEye: Vector3): Silhouette[] {
  const sight = sightOf(torus, toEye);
  if (sight.tilt < NONE) {
    const first = trace.points[0]!;
    const out = length(subtract(first, torus.centre)) > torus.major;
    return between(circleAbout(torus.centre, torus.axis, torus.major + (out ? torus.minor : -torus.minor)), trace, bounds);
  }
  if (Math.abs(sight.along) < NONE) return squareOn(torus, trace, bounds, sight);
  return [traced(torus, trace, bounds, sight)];
}

/** Which of the four exact circles a point of the trace belongs to, and that circle. */
function circleNear(torus: Torus, p: Vector3, { toward, side }: Sight): { key: string; circle: SpaceCurve & { kind: 'ellipse' } } {
  const offset = subtract(p, torus.centre);
  const height = dot(offset, torus.axis);
  const level = unit(subtract(offset, scale(torus.axis, height)));
  const normal = offsetFrom(torus, p).normal;
  if (Math.abs(dot(level, toward)) < Math.abs(dot(normal, level))) {
    const sign = dot(level, side) < 0 ? -1 : 1;
    const centre = add(torus.centre, scale(side, sign * torus.major));
    return { key: `round ${sign}`, circle: circleAbout(centre, toward, torus.minor) };
  }
  const sign = height < 0 ? -1 : 1;
  const centre = add(torus.centre, scale(torus.axis, sign * torus.minor));
  return { key: `rim ${sign}`, circle: circleAbout(centre, torus.axis, torus.major) };
}

function squareOn(torus: Torus, trace: Trace, bounds: readonly (Surface | undefined)[], sight: Sight): Silhouette[] {
  const runs: { key: string; circle: SpaceCurve & { kind: 'ellipse' }; points: Vector3[] }[] = [];
  for (const point of trace.points) {
    const near = circleNear(torus, point, sight);
    const last = runs.at(-1);
    if (last?.key === near.key) last.points.push(point);
    else runs.push({ ...near, points: [point] });
  }
  if (trace.closed && runs.length > 1 && runs[0]!.key === runs.at(-1)!.key) {
    const last = runs.pop()!;
    runs[0]!.points.unshift(...last.points);
  }
  /** The circle round the tube and the rim touch each other's plane where both stand square to the eye. */
  const corner = (p: Vector3): Vector3 => {
    const offset = subtract(p, torus.centre);
    const [s, h] = [dot(offset, sight.side) < 0 ? -1 : 1, dot(offset, torus.axis) < 0 ? -1 : 1];
    return add(torus.centre, add(scale(sight.side, s * torus.major), scale(torus.axis, h * torus.minor)));
  };
  const open = !trace.closed || runs.length === 1;
  return runs.flatMap(({ circle, points }, i) => {
    const [starts, stops] = [open && i === 0, open && i === runs.length - 1];
    const whole = [...(starts ? [] : [corner(points[0]!)]), ...points, ...(stops ? [] : [corner(points.at(-1)!)])];
    const part = { ...trace, points: whole, closed: trace.closed && runs.length === 1 };
    return between(circle, part, [starts ? bounds[0] : undefined, stops ? bounds[1] : undefined]);
  });
}

function traced(torus: Torus, trace: Trace, bounds: readonly (Surface | undefined)[], { along, tilt, toward, side }: Sight): Silhouette {
  const angleOf = (p: Vector3): number => {
    const offset = subtract(p, torus.centre);
    return Math.atan2(dot(offset, side), dot(offset, toward));
  };
  const first = trace.points[0]!;
  const tubeDirection = (t: number, sign: number): Vector3 => {
    const [c, s] = [along, -tilt * Math.cos(t)];
    const size = sign / Math.sqrt(c * c + s * s);
    const away = add(scale(toward, Math.cos(t)), scale(side, Math.sin(t)));
    return add(scale(away, c * size), scale(torus.axis, s * size));
  };
  const branch = dot(offsetFrom(torus, first).normal, tubeDirection(angleOf(first), 1)) < 0 ? -1 : 1;
  const place = (t: number): Vector3 => {
    const away = add(scale(toward, Math.cos(t)), scale(side, Math.sin(t)));
    return add(torus.centre, add(scale(away, torus.major), scale(tubeDirection(t, branch), torus.minor)));
  };
  let total = 0;
  const start = angleOf(first);
  const turn = 2 * Math.PI;
  for (const p of trace.points) {
    const step = angleOf(p) - start - total;
    total += step - turn * Math.round(step / turn);
  }
  if (trace.closed) total = total < 0 ? -turn : turn;
  const ends = [start, start + total].map((t, i) => (bounds[i] ? rootNear(place, t, bounds[i]) : t)) as [number, number];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const read = (t: number): Reading => ({ point: place(t), direction: unit(subtract(place(t + 1e-5), place(t - 1e-5))) });
  const { points } = fitSpline(read, low, high);
  return { curve: { kind: 'spline', points }, low: 0, high: (points.length - 1) / 3 };
}

/** By the secant rule the parameter near `t` at which the curve meets the surface; `t` when there is none close by. */
function rootNear(place: (t: number) => Vector3, t: number, surface: Surface): number {
  const value = (at: number): number => offsetFrom(surface, place(at)).distance;
  let [a, b] = [t, t + 1e-3];
  let [p, q] = [value(a), value(b)];
  for (let round = 0; round < 30 && Math.abs(q) > 1e-12 && p !== q; round += 1) {
    const next = b - (q * (b - a)) / (q - p);
    [a, p] = [b, q];
    b = next;
    q = value(b);
  }
  return Math.abs(q) < 1e-8 && Math.abs(b - t) < 0.3 ? b : t;
}
