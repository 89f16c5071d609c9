import { vectorOf } from '../../part/author/directions.js';
import { stationName } from '../../part/author/phrases.js';
import type { Station } from '../../part/station.js';
import type { Finding } from '../finding.js';
import { areaBetween } from './bands.js';
import { commonPractice, figureOf, frameOf, isFirst, stretchOf, type Check, type OrderContext } from './context.js';
import { faceAt } from './flat-faces.js';
import { place } from './placed.js';

/** Whether anything of the part lies on a station; a centre line has no face. */
export const hasFaces = ({ part }: OrderContext, id: string): boolean =>
  [part.stock.faces, ...part.operations.flatMap(({ cuts }) => cuts.map(({ faces }) => faces))].some((faces) => Object.values(faces).some(({ stations }) => stations.includes(id)));

/** Clamps and fixtures: a face that rests, one that is clamped, and enough of that left while it is cut. */
export const gripByClamps: Check = (context, state) => {
  const { operation, setUp } = state;
  const frame = frameOf(context, state);
  const kind = setUp.grip!.kind;
  const [rest, clamped] = setUp.grip!.between.map((id) => context.part.stations.find((station) => station.id === id)!) as [Station, Station];
  const finding = (gravity: Finding['gravity'], figures: Finding['figures'], sentence: string): Finding => ({ check: 'grip', operation: operation.number, gravity, figures, sentence: [sentence], source: commonPractice });
  const before = place(stretchOf(context, state)[0]!.before, frame);
  const earlier = place(state.before, frame);
  const after = place(state.after, frame);
  // A face rests on what it looks at: away from the other one.
  const senseOf = (station: Station, other: Station): 1 | -1 => {
    if (station.axis === other.axis && Math.abs(station.value - other.value) > 1e-6) return station.value > other.value ? 1 : -1;
    const up = frame.z['xyz'.indexOf(station.axis) as 0 | 1 | 2];
    return (station === clamped ? up : -up) >= 0 ? 1 : -1;
  };
  const found: Finding[] = [];
  for (const [station, other, what] of [[rest, clamped, 'rests on'], [clamped, rest, 'is clamped by']] as const) {
    const sense = senseOf(station, other);
    const there = faceAt(before, frame, station, sense);
    if (there === undefined) {
      if (!isFirst(context, state)) continue;
      const known = hasFaces(context, station.id);
      found.push(
        known && kind === 'clamps'
          ? finding('fatal', { station: station.id }, `Nothing to hold by: the face ${stationName(station.id)}, which the work ${what}, is not there`)
          : finding('remark', { station: station.id }, `The ${kind} takes the work by ${stationName(station.id)}, which is no flat face: whether it holds cannot be told`),
      );
      continue;
    }
    const left = faceAt(after, frame, station, sense);
    const area = areaBetween(there.triangles, -Infinity, Infinity);
    const remaining = left === undefined || Math.abs(left.outside - there.outside) > 0.01 ? 0 : areaBetween(left.triangles, -Infinity, Infinity);
    const upright = Math.abs(vectorOf(`+${station.axis}`).reduce((sum, value, i) => sum + value * frame.z[i as 0 | 1 | 2], 0)) > 0.5;
    const then = faceAt(earlier, frame, station, sense);
    const had = then === undefined ? 0 : areaBetween(then.triangles, -Infinity, Infinity);
    if (!upright) continue;
    const figures = { station: station.id, before: figureOf(area), after: figureOf(remaining) };
    if (remaining < 0.1 * area && had >= 0.1 * area) found.push(finding('fatal', figures, `The clamps would be cut: this operation takes away the face ${stationName(station.id)}, which the work ${what}`));
    else if (remaining < 0.5 * area && had >= 0.5 * area && what === 'is clamped by') found.push(finding('warning', figures, `When this operation is done ${Math.round(100 - (100 * remaining) / area)} % of the face ${stationName(station.id)}, which the work ${what}, is gone: the clamps must stand on the rest, or be moved`));
  }
  return found;
};
