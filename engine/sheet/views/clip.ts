import type { Curve2 } from '../../geometry/curve.js';
import { distance2, type Vector2 } from '../../geometry/vector.js';
import { pointAtAngle } from '../say/extremes.js';

/** The parts of a curve that lie in a disc, as true curves. Ends are found to a millionth of the curve. */
export function clipToDisc(curve: Curve2, centre: Vector2, radius: number): readonly Curve2[] {
  const inside = (t: number): boolean => distance2(pointOf(curve, t), centre) <= radius;
  const steps = curve.kind === 'line' ? 32 : 96;
  const cuts = [0];
  for (let i = 0; i < steps; i += 1) {
    let [low, high] = [i / steps, (i + 1) / steps];
    if (inside(low) === inside(high)) continue;
    const began = inside(low);
    for (let k = 0; k < 24; k += 1) {
      const middle = (low + high) / 2;
      if (inside(middle) === began) low = middle;
      else high = middle;
    }
    cuts.push((low + high) / 2);
  }
  cuts.push(1);
  const kept: Curve2[] = [];
  for (let i = 0; i + 1 < cuts.length; i += 1) {
    const [from, to] = [cuts[i]!, cuts[i + 1]!];
    if (to - from < 1e-9 || !inside((from + to) / 2)) continue;
    kept.push(from === 0 && to === 1 ? curve : portion(curve, from, to));
  }
  return kept;
}

/** The point of a curve at a share of its parameter. */
export function pointOf(curve: Curve2, t: number): Vector2 {
  if (curve.kind === 'line') return mix(curve.from, curve.to, t);
  if (curve.kind === 'spline') {
    const pieces = (curve.points.length - 1) / 3;
    const piece = Math.min(pieces - 1, Math.floor(t * pieces));
    const four = curve.points.slice(piece * 3, piece * 3 + 4) as unknown as Bezier;
    return split(four, t * pieces - piece)[0][3];
  }
  return pointAtAngle(curve, curve.start + curve.sweep * t);
}

/** The stretch of a curve between two shares of its parameter. */
export function portion(curve: Curve2, from: number, to: number): Curve2 {
  if (curve.kind === 'line') return { kind: 'line', from: mix(curve.from, curve.to, from), to: mix(curve.from, curve.to, to) };
  if (curve.kind !== 'spline') return { ...curve, start: curve.start + curve.sweep * from, sweep: curve.sweep * (to - from) };
  const pieces = (curve.points.length - 1) / 3;
  const points: Vector2[] = [];
  for (let i = 0; i < pieces; i += 1) {
    const low = Math.max(0, from * pieces - i);
    const high = Math.min(1, to * pieces - i);
    if (high - low < 1e-12) continue;
    const four = curve.points.slice(i * 3, i * 3 + 4) as unknown as Bezier;
    const right = split(four, low)[1];
    const part = split(right, (high - low) / (1 - low))[0];
    points.push(...(points.length === 0 ? part : part.slice(1)));
  }
  return { kind: 'spline', points };
}

type Bezier = readonly [Vector2, Vector2, Vector2, Vector2];

const mix = (a: Vector2, b: Vector2, t: number): Vector2 => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** A cubic split in two at t (de Casteljau). */
function split([a, b, c, d]: Bezier, t: number): readonly [Bezier, Bezier] {
  const [ab, bc, cd] = [mix(a, b, t), mix(b, c, t), mix(c, d, t)];
  const [abc, bcd] = [mix(ab, bc, t), mix(bc, cd, t)];
  const middle = mix(abc, bcd, t);
  return [
    [a, ab, abc, middle],
    [middle, bcd, cd, d],
  ];
}
