import { add, cross, dot, length, scale, subtract, type Vector3 } from '../geometry/vector.js';
import type { Surface } from '../solid/model.js';
import { offsetFrom } from '../solid/surface.js';
import { fitSpline, type Reading } from './fit-spline.js';
import { settle } from './settle.js';
import { pointAt, slopeAt, type SpaceCurve } from './space-curve.js';

type Pair = readonly [Surface, Surface];

/** Surfaces that meet at a lesser angle than this, radians, do not tell the direction of their curve. */
const FLAT = 1e-3;

/** How far a point of a chord may lie from the curve, mm. */
const REACH = 0.2;

export interface Traced {
  /** Béziers end to end. */
  readonly points: Vector3[];
  /** The spline's parameter for each point of the chain. */
  readonly parameters: number[];
}

/** A smooth curve on both surfaces along a chain of points; the ends of an open chain stay where they are. */
export function traceMeeting(pair: Pair, chain: readonly Vector3[], closed: boolean): Traced {
  const points = inTurn(pair, chain, closed);
  const reached = [0];
  for (let i = 1; i < points.length; i += 1) reached.push(reached[i - 1]! + length(subtract(points[i]!, points[i - 1]!)));
  const last = points.length - 1;
  const whole = reached[last]!;
  const read = (t: number): Reading => {
    let i = 0;
    while (i < last - 1 && reached[i + 1]! <= t) i += 1;
    const [a, b] = [points[i]!, points[i + 1]!];
    const chord = subtract(b, a);
    const run = Math.max(length(chord), 1e-12);
    const start = add(a, scale(chord, (t - reached[i]!) / run));
    const point = !closed && (t === 0 || t === whole) ? start : settle(start, pair, REACH);
    return { point, direction: directionAt(pair, point, chord) ?? scale(chord, 1 / run) };
  };
  const { points: spline, joints } = fitSpline(read, 0, whole);
  const curve: SpaceCurve & { kind: 'spline' } = { kind: 'spline', points: spline };
  let i = 0;
  const places = points.map((p, k) => {
    while (i < joints.length - 2 && joints[i + 1]! <= reached[k]!) i += 1;
    const share = (reached[k]! - joints[i]!) / Math.max(joints[i + 1]! - joints[i]!, 1e-12);
    return nearest(curve, p, i + Math.max(0, Math.min(1, share)));
  });
  return { points: spline, parameters: chain.map((p) => places[points.indexOf(p)] ?? NaN).map(filled) };
}

/** A point left out takes the parameter of the one before. */
function filled(_: number, i: number, all: readonly number[]): number {
  for (let k = i; k >= 0; k -= 1) if (!Number.isNaN(all[k]!)) return all[k]!;
  return 0;
}

/** The direction of the meeting curve, length one, on the side of `along`; undefined where the surfaces touch. */
function directionAt([a, b]: Pair, p: Vector3, along: Vector3): Vector3 | undefined {
  const direction = cross(offsetFrom(a, p).normal, offsetFrom(b, p).normal);
  const size = length(direction);
  return size < FLAT ? undefined : scale(direction, (dot(direction, along) < 0 ? -1 : 1) / size);
}

/**
 * The chain without the points that stand out of turn: where two surfaces graze, the facets' meeting may run past the
 * true end of the curve and back.
 */
function inTurn(pair: Pair, chain: readonly Vector3[], closed: boolean): Vector3[] {
  const [a, b] = pair;
  const ways = chain.map((p) => cross(offsetFrom(a, p).normal, offsetFrom(b, p).normal));
  const sense = Math.sign(chain.slice(1).reduce((sum, p, i) => sum + dot(subtract(p, chain[i]!), ways[i]!), 0));
  const kept = [0];
  for (let i = 1; i < chain.length; i += 1) {
    const before = kept.at(-1)!;
    const step = subtract(chain[i]!, chain[before]!);
    const size = length(step);
    const back = (k: number): boolean => length(ways[k]!) > FLAT && dot(step, ways[k]!) * sense < -0.2 * size * length(ways[k]!);
    if (size > 1e-9 && !(back(before) && back(i))) kept.push(i);
  }
  if (!closed) {
    // The exact end stays; what would run past it goes.
    const end = chain.length - 1;
    if (kept.at(-1) !== end) kept.push(end);
    const past = (k: number): boolean =>
      length(ways[k]!) > FLAT && dot(subtract(chain[end]!, chain[k]!), ways[k]!) * sense < 0.2 * length(ways[k]!) * length(subtract(chain[end]!, chain[k]!)) && length(subtract(chain[end]!, chain[k]!)) < 0.5;
    while (kept.length > 2 && past(kept.at(-2)!)) kept.splice(-2, 1);
  }
  return kept.map((i) => chain[i]!);
}

/** The parameter of the spline's point nearest to p, by steps of Newton from `start`. */
function nearest(curve: SpaceCurve & { kind: 'spline' }, p: Vector3, start: number): number {
  const most = (curve.points.length - 1) / 3;
  let t = start;
  for (let round = 0; round < 4; round += 1) {
    const slope = slopeAt(curve, t);
    t += dot(subtract(p, pointAt(curve, t)), slope) / Math.max(dot(slope, slope), 1e-12);
    t = Math.max(0, Math.min(most, t));
  }
  return t;
}
