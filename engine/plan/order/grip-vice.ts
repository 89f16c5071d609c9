import { stationName } from '../../part/author/phrases.js';
import type { Station } from '../../part/station.js';
import { holding } from '../data/holding.js';
import type { Finding } from '../finding.js';
import type { OperationState } from '../states/state.js';
import { highest, lowest } from './bands.js';
import { commonPractice, figureOf, frameOf, isFirst, mm, stretchOf, type Check, type OrderContext } from './context.js';
import { lookOf } from './flat-faces.js';
import { extentAlong, place, upward } from './placed.js';
import { jawFaces, jawRectangle, standsProud, thinWall } from './vice-jaws.js';

/** Set-ups that say how they deal with what stands in the way of plain jaws, or yields to them. */
const packed = /pack|reliev|soft|bush|block|past the jaws/i;

/** The two stations of a grip, the one at the lower coordinate first. */
export function gripStations({ part }: OrderContext, { setUp }: OperationState): readonly [Station, Station] {
  const [a, b] = setUp.grip!.between.map((id) => part.stations.find((station) => station.id === id)!) as [Station, Station];
  return a.value <= b.value ? [a, b] : [b, a];
}

/** Faces for the two jaws of a vice: there, opposite, high enough, and not cut while they hold. */
export const gripInVice: Check = (context, state) => {
  const frame = frameOf(context, state);
  const stations = gripStations(context, state);
  const [low, high] = stations;
  const finding = (gravity: Finding['gravity'], figures: Finding['figures'], ...sentence: Finding['sentence']): Finding => ({ check: 'grip', operation: state.operation.number, gravity, figures, sentence, source: commonPractice });
  const names = `${stationName(low.id)}${stationName(high.id) === stationName(low.id) ? '' : ` and ${stationName(high.id)}`}`;
  const first = isFirst(context, state);
  if (low.axis !== high.axis || low === high) return first ? [finding('fatal', { low: low.id, high: high.id }, `The vice is to hold between ${names}, which are no two sides of the work`)] : [];
  if (Math.abs(lookOf(frame, high, 1)[2]) > 0.05) return first ? [finding('fatal', { low: low.id, high: high.id }, `The faces for the vice (${names}) do not stand upright as the work lies, so the jaws cannot press on them`)] : [];
  const stretch = stretchOf(context, state);
  const held = stretch[0]!.before;
  const before = jawFaces(held, frame, stations);
  const lost = before.find(({ face }) => face === undefined);
  if (lost !== undefined) return first ? [finding('fatal', { station: lost.station.id }, `Nothing to hold by: the face ${stationName(lost.station.id)}, on which a jaw is to press, is not there when the work goes into the vice`)] : [];
  const jaws = jawRectangle(frame, before, jawFaces(state.after, frame, stations));
  const heightOf = (rectangle: typeof jaws): number => (rectangle === undefined ? 0 : rectangle.high - rectangle.low);
  const whole = jawRectangle(frame, before, before);
  const earlier = first ? whole : jawRectangle(frame, before, jawFaces(state.before, frame, stations));
  const height = heightOf(jaws);
  const placed = place(held, frame);
  const [foot, head] = extentAlong(placed, upward);
  const work = head - foot;
  const long = jaws === undefined ? 0 : jaws.to - jaws.from;
  const figures = { height: figureOf(height), length: figureOf(long), contact: figureOf(jaws?.contact ?? 0), workHeight: figureOf(work) };
  const faceHeight = Math.min(...before.map(({ face }) => highest(face!.triangles))) - Math.max(...before.map(({ face }) => lowest(face!.triangles)));
  const hopeless = (rectangle: typeof jaws): boolean => rectangle === undefined || heightOf(rectangle) < holding.viceHopeless || rectangle.to - rectangle.from < holding.viceHopeless;
  // The stretch is judged as a whole: a later operation speaks only where it takes away more than those before it.
  if (!first && earlier !== undefined && jaws !== undefined && Math.abs(heightOf(earlier) - height) < 1e-3 && Math.abs(earlier.to - earlier.from - long) < 1e-3) return [];
  if (hopeless(jaws)) {
    if (!first && hopeless(earlier)) return [];
    return [
      hopeless(whole)
        ? finding('fatal', { ...figures, faceHeight: figureOf(faceHeight) }, `Nothing to hold by: the two faces for the vice (${names}) stand opposite over `, mm(heightOf(whole)), ' of height only')
        : finding('fatal', { ...figures, faceHeight: figureOf(faceHeight) }, `The jaws would be cut: of the faces that they press on (${names}) this operation leaves `, mm(height), ' of height x ', mm(long), ' of length'),
    ];
  }
  const found: Finding[] = [];
  const wanted = Math.max(holding.viceLeast, holding.viceShare * work);
  if (height < wanted - 1e-6 && (first || heightOf(earlier) >= wanted - 1e-6)) found.push(finding('warning', { ...figures, wanted: figureOf(wanted) }, 'Little to hold by: the vice has ', mm(height), ` of height on ${names}, and `, mm(wanted), ' is wanted (a third of the work’s height): light cuts, a stop at the end'));
  if (!first || packed.test(state.setUp.holding)) return found;
  const wall = thinWall(held, frame, before, jaws!);
  if (wall !== undefined && wall < holding.viceWall) found.push(finding('warning', { wall: figureOf(wall), limit: holding.viceWall }, 'The jaws press across a wall of ', mm(wall), ' over a hollow: fill that with a close block, and tighten lightly'));
  const proud = Math.max(...before.map((side) => standsProud(placed, side, frame, jaws!)));
  if (proud > 0.02) found.push(finding('warning', { proud: figureOf(proud) }, 'Something stands ', mm(proud), ' proud of the faces for the vice where the jaws are: packing with a relief for it is wanted'));
  return found;
};
