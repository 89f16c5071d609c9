import { scale, type Vector3 } from '../geometry/vector.js';
import type { Breaker } from './breaks.js';
import { Carriers } from './carriers.js';
import { flatCurve } from './flat-curve.js';
import { layStrand } from './lay-strand.js';
import type { AddedCurve, Curve3, ViewCurve } from './model.js';
import { NOBODY, type Occlusion } from './occlusion.js';
import { piecesOf } from './pieces.js';
import { shadowOf, type Turn } from './shadow.js';
import { pointAt, type SpaceCurve } from './space-curve.js';
import type { Strand } from './strand.js';

/** A curve of space and its stretch. */
interface Course {
  readonly curve: SpaceCurve;
  readonly low: number;
  readonly high: number;
}

function courseOf(given: Curve3): Course {
  if (given.kind === 'line') {
    const direction: Vector3 = [given.to[0] - given.from[0], given.to[1] - given.from[1], given.to[2] - given.from[2]];
    return { curve: { kind: 'line', point: given.from, direction }, low: 0, high: 1 };
  }
  const [start, sweep] = [(given.start * Math.PI) / 180, (given.sweep * Math.PI) / 180];
  // Turned so that t rises along the way from 0 to 1.
  const back = sweep < 0 ? -1 : 1;
  const ellipse: SpaceCurve = { kind: 'ellipse', centre: given.centre, u: scale(given.x, given.radius), v: scale(given.y, back * given.radius) };
  return { curve: ellipse, low: back * start, high: back * start + Math.abs(sweep) };
}

/** The curves that the drawing adds, each shown or hidden stretch by stretch as its tested curve is. */
export function addedCurves(added: readonly AddedCurve[], turn: Turn, breaker: Breaker, hidden: Occlusion, tolerance: number): ViewCurve[] {
  return added.flatMap(({ drawn, tested, role, name }) => {
    const [shown, probe] = [courseOf(drawn), courseOf(tested)];
    const shadow = shadowOf(probe.curve, turn);
    const strand: Strand = { ...probe, parent: 0, shadow, role, surfaces: [], covered: false, outline: false };
    const carriers = new Carriers();
    layStrand(carriers, strand);
    const test = (_: Strand, t0: number, t1: number): boolean => {
      const votes = [0.38, 0.5, 0.71].filter((s) => !hidden(pointAt(probe.curve, t0 + (t1 - t0) * s), NOBODY, tolerance));
      return votes.length >= 2;
    };
    const pieces = carriers.all.flatMap((carrier) => piecesOf(carrier, breaker, test));
    const whole = probe.high - probe.low;
    const stretches = pieces
      .map(({ t0, t1, visible }) => ({ a: (t0 - probe.low) / whole, b: (t1 - probe.low) / whole, visible }))
      .sort((p, q) => p.a - q.a);
    const merged: typeof stretches = [];
    for (const next of stretches.length > 0 ? stretches : [{ a: 0, b: 1, visible: test(strand, probe.low, probe.high) }]) {
      const last = merged.at(-1);
      if (last && last.visible === next.visible && Math.abs(next.a - last.b) < 1e-5) merged[merged.length - 1] = { ...last, b: next.b };
      else merged.push(next);
    }
    const drawnShadow = shadowOf(shown.curve, turn);
    const place = (s: number): number => shown.low + s * (shown.high - shown.low);
    return merged.map(({ a, b, visible }): ViewCurve => ({
      geometry: flatCurve(drawnShadow, place(a), place(b)), visible, role, name, surfaces: [],
    }));
  });
}

