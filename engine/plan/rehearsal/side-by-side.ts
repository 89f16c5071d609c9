import { scale, type Vector3 } from '../../geometry/vector.js';
import type { Cut } from '../../part/cut.js';
import type { Form } from '../../part/form.js';
import type { Part, Stock } from '../../part/part.js';
import type { Axis, Station } from '../../part/station.js';
import { indexOf, vectorOf } from '../../part/author/directions.js';
import { sized } from '../../part/author/stations.js';
import { roomOf } from '../../part/author/stock.js';
import { movedCut } from '../../part/moved.js';

/** How the trials of a piece stand on its blank. */
export interface Beside {
  readonly axis: Axis;
  /** From each trial to the next, mm along the axis; below nought where they go toward its low end. */
  readonly pitch: number;
}

/** The id of a cut or a station as a later trial has it. */
export const inTrial = (id: string, trial: number): string => `${id}, trial ${trial}`;

/** From where the first trial stands to a later one. */
export const shiftOf = ({ axis, pitch }: Beside, trial: number): Vector3 => scale(vectorOf(`+${axis}`), (trial - 1) * pitch);

/**
 * A piece with all its cuts made again beside each other on a blank that is longer by as much. Sizes are said at the first
 * trial; of each later one it is said how far it stands from there.
 */
export function sideBySide(piece: Part, { axis, pitch }: Beside, trials: number): Part {
  const later = Array.from({ length: trials - 1 }, (_, i) => i + 2);
  const cuts = piece.operations.flatMap((operation) => operation.cuts);
  const own = stationsOnAxis(piece, cuts, axis);
  const ids = new Set(own.map(({ id }) => id));
  const anchor = anchorOf(piece, own);
  const copies = later.flatMap((trial) => own.map((station) => stationIn(station, trial, pitch, station.id === anchor?.id)));
  const again = (cut: Cut): readonly Cut[] =>
    later.map((trial) => ({
      ...movedCut(cut, shiftOf({ axis, pitch }, trial), inTrial(cut.id, trial), (id) => (ids.has(id) ? inTrial(id, trial) : id)),
      name: inTrial(cut.name, trial),
      repeats: { cut: cut.id, trial },
      instruction: [`Trial ${trial}: the same, `, { length: Math.abs((trial - 1) * pitch) }, ' from trial 1.'],
    }));
  const longer = (trials - 1) * pitch;
  const { stock, station } = lengthened(piece, axis, longer);
  return {
    ...piece,
    quantity: 1,
    notes: [...piece.notes, [`Sizes stand at trial 1. ${trials === 2 ? 'Trial 2 is' : `Trials 2 ${trials === 3 ? 'and' : 'to'} ${trials} are`} the same beside it, but for sizes that stand there.`]],
    stock,
    stations: [...piece.stations.map((each) => (each.id === station?.id ? station : each)), ...copies],
    operations: piece.operations.map((operation) => ({ ...operation, cuts: operation.cuts.flatMap((cut) => [cut, ...again(cut)]) })),
  };
}

/** The stations along the axis on which the cuts stand, but not those of the blank's own ends. */
function stationsOnAxis(piece: Part, cuts: readonly Cut[], axis: Axis): readonly Station[] {
  const named = new Set(cuts.flatMap(({ stations, faces, finishDepth }) => [...stations, ...(finishDepth?.walls ?? []), ...Object.values(faces).flatMap((face) => [...face.stations, ...(face.bounds ?? [])])]));
  return piece.stations.filter((station) => station.axis === axis && named.has(station.id));
}

/** What shows where a later trial stands: a line or a face of the last cut, which is one of the rehearsed. */
function anchorOf(piece: Part, own: readonly Station[]): Station | undefined {
  for (const cut of piece.operations.flatMap((operation) => operation.cuts).reverse())
    for (const id of cut.stations) {
      const found = own.find((station) => station.id === id);
      if (found !== undefined && found.placing.kind !== 'derived') return found;
    }
  return own.find(({ placing }) => placing.kind !== 'derived');
}

function stationIn(station: Station, trial: number, pitch: number, isAnchor: boolean): Station {
  const away = (trial - 1) * pitch;
  return {
    ...station,
    id: inTrial(station.id, trial),
    name: inTrial(station.name, trial),
    value: station.value + away,
    placing: isAnchor ? { kind: 'from', station: station.id, distance: sized(Math.abs(away)), sense: away < 0 ? -1 : 1 } : { kind: 'derived', station: station.id, by: 'the pitch of the trials' },
  };
}

/** The stock made longer at one end, and the station of that end where it has moved. */
function lengthened(piece: Part, axis: Axis, by: number): { readonly stock: Stock; readonly station: Station | undefined } {
  const face = `${by < 0 ? 'low' : 'high'} ${axis}`;
  const [form] = piece.stock.forms;
  if (form?.kind !== 'prism') throw new RangeError('a flat bar is one prism');
  const way = form.frame.z[indexOf(axis)];
  const longer: Form = by * way < 0 ? { ...form, low: form.low - Math.abs(by) } : { ...form, high: form.high + Math.abs(by) };
  const end = piece.stations.find(({ id }) => piece.stock.faces[face]?.stations.includes(id) === true);
  return { stock: { ...piece.stock, length: piece.stock.length + Math.abs(by), forms: [longer] }, station: end === undefined ? undefined : movedEnd(end, by, piece.stations) };
}

function movedEnd(end: Station, by: number, stations: readonly Station[]): Station {
  const value = end.value + by;
  const { placing } = end;
  if (placing.kind !== 'from') return { ...end, value };
  const distance = value - stations.find(({ id }) => id === placing.station)!.value;
  return { ...end, value, placing: { ...placing, distance: { ...placing.distance, value: Math.abs(distance) }, sense: distance < 0 ? -1 : 1 } };
}

/** Where a piece's blank may be made longer: the sawn end along an axis that no face of the part lies on; undefined for none. */
export function freeEnd(piece: Part, axis: Axis, madeForBlank: ReadonlySet<string>): 1 | -1 | undefined {
  const isFree = (side: 'low' | 'high'): boolean => {
    const stations = piece.stock.faces[`${side} ${axis}`]?.stations ?? [];
    const end = piece.stations.find(({ id }) => stations.includes(id));
    return end !== undefined && madeForBlank.has(end.id) && end.placing.kind !== 'datum' && piece.stations.every(({ placing }) => placing.kind !== 'from' || placing.station !== end.id);
  };
  return isFree('high') ? 1 : isFree('low') ? -1 : undefined;
}

/** How long a piece's blank is along an axis. */
export function lengthAlong(piece: Part, axis: Axis): number {
  const { low, high } = roomOf(piece.stock);
  return high[indexOf(axis)] - low[indexOf(axis)];
}
