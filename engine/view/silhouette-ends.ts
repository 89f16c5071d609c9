import { dot, length, subtract } from '../geometry/vector.js';
import type { Surface } from '../solid/model.js';
import { offsetFrom } from '../solid/surface.js';
import type { Trace } from './silhouette-traces.js';
import { parameterOf, pointAt, slopeAt, type SpaceCurve } from './space-curve.js';

/** A silhouette's exact curve between its ends. */
export interface Silhouette {
  readonly curve: SpaceCurve;
  readonly low: number;
  readonly high: number;
}

/** The stretch of a line or a circle that the trace covers, with exact ends; the tip of a cone is at 0. */
export function between(curve: SpaceCurve & { kind: 'line' | 'ellipse' }, trace: Trace, bounds: readonly (Surface | undefined)[]): Silhouette[] {
  const [first, last] = [trace.points[0]!, trace.points.at(-1)!];
  if (curve.kind === 'line') {
    const ends = [first, last].map((p, i) => (bounds[i] ? endOn(curve, parameterOf(curve, p), bounds[i]) : 0)) as [number, number];
    return Math.abs(ends[1] - ends[0]) < 1e-9 ? [] : [{ curve, low: Math.min(...ends), high: Math.max(...ends) }];
  }
  if (trace.closed) return [{ curve, low: 0, high: 2 * Math.PI }];
  let t = parameterOf(curve, first);
  let total = 0;
  for (const p of trace.points) {
    const step = parameterOf(curve, p) - t - total;
    total += step - 2 * Math.PI * Math.round(step / (2 * Math.PI));
  }
  const ends = [t, t + total].map((end, i) => (bounds[i] ? endOn(curve, end, bounds[i]) : end)) as [number, number];
  t = Math.min(...ends);
  return Math.abs(ends[1] - ends[0]) < 1e-9 ? [] : [{ curve, low: t, high: Math.max(...ends) }];
}

/** An end farther than this from where the facets have it is another one, mm. */
const NEAR = 0.5;

/** The parameter near `t` at which the curve meets the surface; `t` itself when there is none close by. */
export function endOn(curve: SpaceCurve, t: number, surface: Surface): number {
  if (curve.kind === 'line' && surface.kind === 'plane') {
    const pace = dot(surface.normal, curve.direction);
    if (Math.abs(pace) < 1e-9) return t;
    const met = dot(subtract(surface.point, curve.point), surface.normal) / pace;
    return Math.abs(met - t) < NEAR ? met : t;
  }
  let at = t;
  for (let round = 0; round < 20; round += 1) {
    const { distance, normal } = offsetFrom(surface, pointAt(curve, at));
    const pace = dot(normal, slopeAt(curve, at));
    if (Math.abs(distance) < 1e-12 || Math.abs(pace) < 1e-9) break;
    at -= distance / pace;
  }
  const p = pointAt(curve, at);
  const good = Math.abs(offsetFrom(surface, p).distance) < 1e-7 && length(subtract(p, pointAt(curve, t))) < NEAR;
  return good ? at : t;
}
