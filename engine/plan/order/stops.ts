import { dot } from '../../geometry/vector.js';
import { stationName } from '../../part/author/phrases.js';
import type { Cut, Phrase } from '../../part/cut.js';
import type { Operation, Part } from '../../part/part.js';
import type { Sized } from '../../part/tolerance.js';
import type { HandComparison } from '../../solid/hand.js';
import { machineFrame } from '../machine-frame.js';
import type { OperationState } from '../states/state.js';
import { handOperation } from './hand-operation.js';
import { stationsThere } from './stations-there.js';

/** A place in the order at which to stop and think. */
export interface Stop {
  /** Number of the operation before or after which it stands. */
  readonly operation: number;
  readonly when: 'before' | 'after';
  /** "measure": something must be measured before the next cut. "no return": what is wrong now stays wrong. */
  readonly kind: 'measure' | 'no return';
  readonly words: Phrase;
}

/** A size in all no wider than this is measured before its last cut, mm: common practice. */
const close = 0.06;

const widthOf = ({ tolerance }: Sized): number => {
  if (tolerance === undefined || tolerance.kind === 'maximum' || tolerance.kind === 'minimum') return Infinity;
  return tolerance.kind === 'plus-minus' ? 2 * tolerance.value : tolerance.upper - tolerance.lower;
};

/** The stops of a part, in the order in which they come. @param comparison tells the operation that makes the hand. */
export function stopsOf(part: Part, states: readonly OperationState[], comparison?: HandComparison): readonly Stop[] {
  const hand = comparison === undefined ? undefined : handOperation(part, states, comparison);
  return states.flatMap((state, i): readonly Stop[] => {
    const { operation, setUp } = state;
    const next = states[i + 1];
    const leaves = next === undefined ? undefined : next.setUp.id !== setUp.id;
    const stop = (when: Stop['when'], kind: Stop['kind'], ...words: Phrase): Stop => ({ operation: operation.number, when, kind, words });
    const stops: Stop[] = [];
    if (hand?.operation === operation) stops.push(stop('before', 'no return', `Is this the ${part.hand} hand? Hold the blank beside the sheet: with ${hand.cuts.map(({ name }) => name).join(', ')} it is of one hand`));
    for (const going of goingHere(part, states, i)) stops.push(stop('before', 'no return', `This cuts away ${stationName(going)}, from which was counted so far: whatever is to be measured from it, measure now`));
    const parting = partsOff(part, operation);
    if (parting) stops.push(stop('before', 'no return', 'Parted off, it does not run true again: measure all that was turned in this chucking'));
    const sizes = operation.cuts.flatMap((cut) => closeSizes(part, cut, setUp.machine));
    if (sizes.length > 0) stops.push(stop('before', 'measure', 'Measure before the last cut, and take off what is left: ', ...sizes.flatMap((size, k): Phrase => [...(k === 0 ? [] : [', ']), ...size])));
    if (leaves === true && setUp.machine === 'lathe' && setUp.grip?.kind !== 'between centres' && !parting && turnsHere(operation.setUp, states, i)) stops.push(stop('after', 'no return', 'The work leaves the chuck in which its axis was set, and does not run true again: measure all that was turned here, and try the gauges, before it comes out'));
    return stops;
  });
}

const partsOff = (part: Part, operation: Operation): boolean => {
  const setUp = part.setUps.find(({ id }) => id === operation.setUp)!;
  if (setUp.machine !== 'lathe') return false;
  const { z } = machineFrame(part, setUp);
  return operation.cuts.some(({ forms }) => forms.some((form) => form.kind === 'half-space' && dot(form.normal, z) < -0.999));
};

/** Whether a chucking that ends here has turned, bored or reamed anything. */
function turnsHere(setUp: string, states: readonly OperationState[], last: number): boolean {
  let first = last;
  while (states[first - 1]?.setUp.id === setUp) first -= 1;
  return states.slice(first, last + 1).some(({ operation }) => operation.cuts.some(({ forms, sizes }) => forms.some(({ kind }) => kind === 'revolution') && sizes.some(({ kind }) => kind !== 'centre-hole')));
}

/** Zeros of set-ups until now, flat faces all, that the work has before this operation and not after it. */
function goingHere(part: Part, states: readonly OperationState[], i: number): readonly string[] {
  const state = states[i]!;
  if (state.after === state.before) return [];
  const used = new Set(states.slice(0, i + 1).flatMap(({ setUp }) => setUp.zero));
  const [before, after] = [stationsThere(part, state.before), stationsThere(part, state.after)];
  return [...used].filter((id) => before.has(id) && !after.has(id));
}

/** The close sizes of a cut that a slide sets; what a reamer or a tap makes is as it comes. */
function closeSizes(part: Part, cut: Cut, machine: string): readonly Phrase[] {
  if (machine === 'bench') return [];
  const round = cut.sizes.flatMap((size): readonly Phrase[] => {
    if (size.kind !== 'diameter' && size.kind !== 'counterbore' && !(size.kind === 'hole' && (size.finish === 'bored' || size.finish === 'milled'))) return [];
    return widthOf(size.diameter) > close ? [] : [[`${cut.name} `, inPhrase(size.diameter, 'diameter')]];
  });
  const flat = cut.stations.flatMap((id): readonly Phrase[] => {
    const station = part.stations.find((each) => each.id === id);
    if (station === undefined || !Object.values(cut.faces).some(({ stations }) => stations.includes(id))) return [];
    const { placing } = station;
    if (placing.kind === 'from') return widthOf(placing.distance) > close ? [] : [[`${station.name} `, inPhrase(placing.distance), ` from ${stationName(placing.station)}`]];
    if (placing.kind !== 'pair' || widthOf(placing.width) > close) return [];
    // Of a pair whose other side is cut elsewhere the width is there only with the second one.
    const both = cut.stations.includes(placing.other) || madeBefore(part, placing.other, cut);
    return both && id.endsWith(', high') ? [[`${station.name} `, inPhrase(placing.width)]] : both && !cut.stations.includes(placing.other) ? [[`${station.name} `, inPhrase(placing.width)]] : [];
  });
  return [...round, ...flat];
}

/** Whether a station has a face before a cut is made. */
function madeBefore(part: Part, id: string, cut: Cut): boolean {
  const cuts = part.operations.flatMap(({ cuts: each }) => each);
  const earlier = cuts.slice(0, cuts.indexOf(cut));
  return Object.values(part.stock.faces).some(({ stations }) => stations.includes(id)) || earlier.some(({ faces }) => Object.values(faces).some(({ stations }) => stations.includes(id)));
}

const inPhrase = ({ value, tolerance }: Sized, sign?: 'diameter'): Phrase[number] => ({ length: value, ...(tolerance === undefined ? {} : { tolerance }), ...(sign === undefined ? {} : { sign }) });
