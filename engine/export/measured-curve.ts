import type { Curve2 } from '../geometry/curve.js';
import { distance2, length2, scale2, subtract2, add2, type Vector2 } from '../geometry/vector.js';
import { arcLength } from './arc-length.js';

/** A curve that can be cut by length. */
export interface MeasuredCurve {
  readonly length: number;
  /** Whether it is a full circle or ellipse, so that it has no ends. */
  readonly closed: boolean;
  /** The piece between two distances from the start, mm; on a closed curve they may run over the start. */
  readonly part: (from: number, to: number) => Curve2;
}

type Arc = Extract<Curve2, { kind: 'arc' }>;
type Ellipse = Extract<Curve2, { kind: 'ellipse' }>;
type Spline = Extract<Curve2, { kind: 'spline' }>;

/** Whether a sweep makes a full turn. */
export const fullTurn = (sweep: number): boolean => Math.abs(sweep) >= 360 - 1e-9;

export function measureCurve(curve: Curve2): MeasuredCurve {
  switch (curve.kind) {
    case 'line': {
      const length = distance2(curve.from, curve.to);
      const at = (distance: number): Vector2 => add2(curve.from, scale2(subtract2(curve.to, curve.from), length === 0 ? 0 : distance / length));
      return { length, closed: false, part: (from, to) => ({ kind: 'line', from: at(from), to: at(to) }) };
    }
    case 'arc':
      return measureArc(curve);
    case 'ellipse':
      return measureEllipse(curve);
    case 'spline':
      return measureSpline(curve);
  }
}

function measureArc(curve: Arc): MeasuredCurve {
  const length = (Math.abs(curve.sweep) * Math.PI * curve.radius) / 180;
  const turn = length === 0 ? 0 : curve.sweep / length;
  return {
    length,
    closed: fullTurn(curve.sweep),
    part: (from, to) => ({ ...curve, start: curve.start + turn * from, sweep: turn * (to - from) }),
  };
}

function measureEllipse(curve: Ellipse): MeasuredCurve {
  const radian = Math.PI / 180;
  const speed = (t: number): number => Math.hypot(curve.radiusX * Math.sin(t * radian), curve.radiusY * Math.cos(t * radian)) * radian;
  const { length, parameterAt } = arcLength((t) => speed(curve.start + Math.sign(curve.sweep) * t), 0, Math.abs(curve.sweep));
  const closed = fullTurn(curve.sweep);
  const at = (distance: number): number => {
    if (!closed || length === 0) return parameterAt(distance);
    const turns = Math.floor(distance / length);
    return turns * 360 + parameterAt(distance - turns * length);
  };
  const sign = Math.sign(curve.sweep);
  return {
    length,
    closed,
    part: (from, to) => ({ ...curve, start: curve.start + sign * at(from), sweep: sign * (at(to) - at(from)) }),
  };
}

type Cubic = readonly [Vector2, Vector2, Vector2, Vector2];

/** The Béziers of a spline. Throws RangeError unless it has 3n + 1 points. */
export function cubicsOf(curve: Spline): readonly Cubic[] {
  const { points } = curve;
  if (points.length < 4 || points.length % 3 !== 1) throw new RangeError(`a spline has 3n + 1 points, not ${points.length}`);
  return Array.from({ length: (points.length - 1) / 3 }, (_, index) => points.slice(3 * index, 3 * index + 4) as unknown as Cubic);
}

const between = (a: Vector2, b: Vector2, share: number): Vector2 => [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];

/** The Bézier's part up to `share` of its parameter and the part after it, by de Casteljau's construction. */
function splitCubic([a, b, c, d]: Cubic, share: number): readonly [Cubic, Cubic] {
  const [ab, bc, cd] = [between(a, b, share), between(b, c, share), between(c, d, share)];
  const [abc, bcd] = [between(ab, bc, share), between(bc, cd, share)];
  const middle = between(abc, bcd, share);
  return [
    [a, ab, abc, middle],
    [middle, bcd, cd, d],
  ];
}

function cubicSpeed([a, b, c, d]: Cubic, t: number): number {
  const [u, v, w] = [subtract2(b, a), subtract2(c, b), subtract2(d, c)];
  const s = 1 - t;
  return 3 * length2(add2(add2(scale2(u, s * s), scale2(v, 2 * s * t)), scale2(w, t * t)));
}

function measureSpline(curve: Spline): MeasuredCurve {
  let start = 0;
  const pieces = cubicsOf(curve).map((cubic) => {
    const measure = arcLength((t) => cubicSpeed(cubic, t), 0, 1);
    const piece = { cubic, start, ...measure };
    start += measure.length;
    return piece;
  });
  const part = (from: number, to: number): Curve2 => {
    const points: Vector2[] = [];
    for (const { cubic, start: pieceStart, length, parameterAt } of pieces) {
      if (pieceStart + length <= from || pieceStart >= to) continue;
      const [low, high] = [parameterAt(from - pieceStart), parameterAt(to - pieceStart)];
      const [head] = splitCubic(cubic, high);
      const [, cut] = splitCubic(head, high === 0 ? 0 : low / high);
      points.push(...(points.length === 0 ? cut : cut.slice(1)));
    }
    return { kind: 'spline', points };
  };
  return { length: start, closed: false, part };
}
