import { dot } from '../../geometry/vector.js';
import type { Operation } from '../../part/part.js';
import type { MachineFrame } from '../machine-frame.js';
import { stationName } from '../../part/author/phrases.js';
import { holding } from '../data/holding.js';
import type { Finding } from '../finding.js';
import { acrossRound, commonPractice, figureOf, frameOf, isFirst, mm, plain, stretchOf, type Check } from './context.js';
import { gripStations } from './grip-vice.js';
import { place } from './placed.js';
import { alongSpindle, roundGrip } from './round-grip.js';
import { threadsThere } from './threads-there.js';

/** Set-ups that spare what they hold, and keep thin work round. */
export const sparing = /split bush|soft|bushed|plug|packing|card|copper|alumin|brass/i;

/** Parting leaves the bar in the chuck: all that goes lies toward the headstock. */
const partsOff = (operation: Operation, frame: MachineFrame): boolean => operation.cuts.some(({ forms }) => forms.some((form) => form.kind === 'half-space' && dot(form.normal, frame.z) < -0.999));

/** Round the work: enough length in the jaws, of a shape that they hold, not cut while they hold it, and no ring that they crush. */
export const gripInChuck: Check = (context, state) => {
  const { operation, setUp } = state;
  const frame = frameOf(context, state);
  const kind = setUp.grip!.kind;
  const stations = gripStations(context, state);
  const finding = (gravity: Finding['gravity'], figures: Finding['figures'], ...sentence: Finding['sentence']): Finding => ({ check: 'grip', operation: operation.number, gravity, figures, sentence, source: commonPractice });
  const ends = stations.map(({ value, axis }) => alongSpindle(frame, value, axis)).sort((a, b) => a - b) as [number, number];
  const between = `between ${stationName(stations[0].id)} and ${stationName(stations[1].id)}`;
  if (stations.some(({ axis }) => Math.abs(frame.z['xyz'.indexOf(axis) as 0 | 1 | 2]) < 0.99)) return [finding('fatal', {}, `The ${kind} is to hold ${between}, which do not lie one after the other along the spindle`)];
  const stretch = stretchOf(context, state);
  const before = roundGrip(place(stretch[0]!.before, frame), frame, ...ends);
  if (before === undefined) return isFirst(context, state) ? [finding('fatal', { length: 0 }, `Nothing to hold by: there is no metal ${between} for the ${kind} to close on`)] : [];
  const previous = stretch[stretch.indexOf(state) - 1];
  const sofar = previous === undefined ? before : roundGrip(place(previous.after, frame), frame, ...ends);
  const after = roundGrip(place(state.after, frame), frame, ...ends);
  const found: Finding[] = [];
  const left = after?.area ?? 0;
  if (left < (sofar?.area ?? 0) - 0.05 && left < 0.998 * before.area && !(partsOff(operation, frame) && state === stretch.at(-1))) found.push(finding('fatal', { before: figureOf(before.area), after: figureOf(left) }, `The jaws would be cut: this operation cuts into what the ${kind} holds ${between}`));
  if (!isFirst(context, state)) return found;
  const wanted = Math.min(before.diameter, holding.chuckEnough);
  const figures = { length: figureOf(before.length), diameter: figureOf(before.diameter), wanted: figureOf(wanted) };
  if (before.length < holding.hopeless * wanted) found.push(finding('fatal', figures, `Nothing to hold by: the ${kind} has `, mm(before.length), ' of length on ', acrossRound(before.diameter), ', and ', mm(wanted), ' is wanted (one diameter, or ', mm(holding.chuckEnough), ')'));
  else if (before.length < wanted - 1e-6) found.push(finding('warning', figures, `Little to hold by: the ${kind} has `, mm(before.length), ' of length on ', acrossRound(before.diameter), ', and ', mm(wanted), ' is wanted: light cuts, or a longer chucking piece'));
  if (kind !== 'four-jaw chuck' && !before.round && before.flats % 3 !== 0) found.push(finding('warning', { flats: before.flats }, `A ${kind} does not hold what has ${before.flats} flats true: a four-jaw chuck does`));
  const wall = before.bore === 0 ? Infinity : (before.diameter - before.bore) / 2;
  if (wall < holding.ringWall * before.diameter && !sparing.test(setUp.holding))
    found.push(finding('warning', { wall: figureOf(wall), diameter: figureOf(before.diameter), limit: holding.ringWall }, 'The jaws close on a ring with a wall of ', mm(wall), ' on ', acrossRound(before.diameter), ` (${plain((100 * wall) / before.diameter)} %, and ${holding.ringWall * 100} % is stiff): it goes out of round; a plug inside or soft jaws are wanted`));
  for (const thread of threadsThere(context.part, operation, frame, ends)) if (!sparing.test(setUp.holding)) found.push(finding('warning', { thread }, `The jaws close on the thread ${thread}: a split bush or a threaded one is wanted`));
  return found;
};
