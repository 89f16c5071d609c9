import { dot, type Vector3 } from '../../geometry/vector.js';
import type { Solid } from '../../solid/model.js';
import { drillingLimits } from '../data/drilling-limits.js';
import type { Finding } from '../finding.js';
import { acrossRound, commonPractice, figureOf, mm, plain, type Check } from './context.js';
import { drillings, type Meeting } from './drillings.js';

const degrees = 180 / Math.PI;

/** Whether a drill starts on a square face, and on one at all. */
export const drillStart: Check = (context, state) =>
  drillings(context, state).flatMap(({ size, metal }) => {
    const finding = (gravity: Finding['gravity'], figures: Finding['figures'], ...sentence: Finding['sentence']): Finding => ({ check: 'drill start', operation: state.operation.number, gravity, figures, sentence, source: commonPractice });
    const diameter = size.diameter.value;
    const worst = metal.map((meeting) => startOf(meeting, diameter, state.before, size.direction)).sort((a, b) => b.badness - a.badness)[0]!;
    const { missing, slope, on } = worst;
    if (on === 'air') return [finding('fatal', { diameter: figureOf(diameter), rim: figureOf(1 - missing) }, 'The drill ', acrossRound(diameter), ' finds no metal under its point, where it is to start')];
    if (missing > drillingLimits.startRim) return [finding('fatal', { diameter: figureOf(diameter), rim: figureOf(1 - missing) }, 'The drill ', acrossRound(diameter), ` starts over an edge: ${Math.round(100 * (1 - missing))} % of its rim finds metal, and it runs off: mill a seat for it, or drill before that edge is cut`)];
    if (missing > 0) return [finding('warning', { diameter: figureOf(diameter), rim: figureOf(1 - missing) }, 'The drill ', acrossRound(diameter), ` starts over an edge: ${Math.round(100 * (1 - missing))} % of its rim finds metal: start with a centre drill, or drill before that edge is cut`)];
    if (on === 'round') return worst.offset > 0.15 ? [finding('warning', { diameter: figureOf(diameter), slope: figureOf(slope) }, 'The drill ', acrossRound(diameter), ` starts beside the crown of a round, on a slope of ${plain(slope)}°: mill a seat, or guide it in a jig`)] : [finding('remark', { diameter: figureOf(diameter) }, 'The drill ', acrossRound(diameter), ' starts on the crown of a round: centre it first, or it wanders')];
    if (slope > drillingLimits.startMost) return [finding(slope > 45 ? 'fatal' : 'warning', { diameter: figureOf(diameter), slope: figureOf(slope) }, 'The drill ', acrossRound(diameter), ` starts on a slope of ${plain(slope)}°, which throws it off by up to `, mm((diameter / 2) * Math.tan(slope / degrees)), ': mill a square seat first')];
    if (slope > drillingLimits.startFree) return [finding('remark', { diameter: figureOf(diameter), slope: figureOf(slope) }, 'The drill ', acrossRound(diameter), ` starts on a slope of ${plain(slope)}°: start it with a centre drill`)];
    return [];
  });

interface Start {
  /** Share of the rim that finds no metal near the point's start. */
  readonly missing: number;
  readonly slope: number;
  readonly on: 'flat' | 'round' | 'air';
  /** On a round: unevenness of the rim across the axis, in diameters. */
  readonly offset: number;
  readonly badness: number;
}

function startOf({ centre, rim }: Meeting, diameter: number, { faces, surfaces }: Solid, direction: Vector3): Start {
  const first = centre[0];
  if (first === undefined) return { missing: 1, slope: 0, on: 'air', offset: 0, badness: 1e6 };
  const deeper = rim.filter((spans) => spans[0] === undefined || spans[0].from > first.from + 1.2 * diameter || (spans[0].from > first.from + 0.6 * diameter && surfaces[faces[spans[0].enters]!.surface]!.kind === 'plane'));
  const missing = deeper.length / rim.length;
  const surface = surfaces[faces[first.enters]!.surface]!;
  if (surface.kind === 'plane') {
    const slope = Math.acos(Math.min(1, Math.abs(dot(surface.normal, direction)))) * degrees;
    // On a steep face the far rim is deep without an edge.
    const steep = slope > 25 ? 0 : missing;
    return { missing: steep, slope, on: 'flat', offset: 0, badness: steep * 1000 + slope };
  }
  const heights = rim.flatMap((spans) => spans[0]?.from ?? []);
  const half = rim.length / 2;
  const offset = Math.max(0, ...Array.from({ length: half }, (_, i) => Math.abs((rim[i]![0]?.from ?? 0) - (rim[i + half]![0]?.from ?? 0)))) / diameter;
  const slope = Math.atan2(Math.max(...heights) - Math.min(...heights), diameter) * degrees;
  return { missing, slope, on: 'round', offset, badness: missing * 1000 + offset * 100 + 1 };
}
