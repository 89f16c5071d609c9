import type { Cut, ThreadSize } from '../../cut.js';
import type { Axis, Station } from '../../station.js';
import type { Sized } from '../../tolerance.js';
import { indexOf, pointAt } from '../directions.js';
import { polygonOutline } from '../outlines.js';
import { inWords } from '../phrases.js';
import type { Vector3 } from '../../../geometry/vector.js';
import { axisFrame } from './pocket.js';

interface InBore {
  readonly id: string;
  readonly name: string;
  readonly axis: Axis;
  readonly centre: readonly [Station, Station];
}

/** A groove round the inside of a bore, between two stations: where a thread runs out before a shoulder, or a ring sits. */
export interface UndercutCut extends InBore {
  readonly from: Station;
  readonly to: Station;
  readonly diameter: Sized;
  readonly texture?: number;
}

/** Throws RangeError for no width. */
export function undercut(cut: UndercutCut): Cut {
  const radius = cut.diameter.value / 2;
  if (cut.from.value === cut.to.value) throw new RangeError(`the ${cut.name} has no width`);
  const [low, high] = [cut.from.value, cut.to.value].sort((a, b) => a - b) as [number, number];
  const wall = (height: number): string => (height === cut.from.value ? 'start' : 'shoulder 1');
  return {
    id: cut.id,
    name: cut.name,
    forms: [
      {
        kind: 'revolution',
        frame: axisFrame(cut.axis, cut.centre),
        outline: polygonOutline([[0, low], [radius, low], [radius, high], [0, high]], [wall(low), 'step 1', wall(high), 'axis']),
      },
    ],
    faces: {
      start: { stations: [cut.from.id] },
      'step 1': { stations: [], ...(cut.texture === undefined ? {} : { texture: cut.texture }) },
      'shoulder 1': { stations: [cut.to.id] },
      axis: { stations: [] },
    },
    sizes: [{ kind: 'diameter', cut: cut.id, from: onAxis(cut, cut.from), to: onAxis(cut, cut.to), diameter: cut.diameter, internal: true }],
    stations: [cut.from.id, cut.to.id],
    instruction: [`Groove ${cut.name}: `, inWords(cut.diameter, 'diameter'), ` from ${cut.from.name} to ${cut.to.name}`],
  };
}

/** A thread in a bore from its mouth as far as `to`, where its tool runs out. */
export interface InternalThreadCut extends InBore {
  readonly from: Station;
  readonly to: Station;
  readonly thread: ThreadSize;
  /** Diameter of the bore, mm. */
  readonly core: number;
  /** Tapped unless said. */
  readonly method?: 'tap' | 'screw-cut';
}

/** Throws RangeError for a bore that leaves nothing to thread. */
export function internalThread(cut: InternalThreadCut): Cut {
  if (!(cut.core < cut.thread.major)) throw new RangeError(`the bore of the ${cut.name} is as wide as its thread`);
  const method = cut.method ?? 'tap';
  return {
    id: cut.id,
    name: cut.name,
    forms: [],
    faces: {},
    sizes: [{ kind: 'internal-thread', cut: cut.id, thread: cut.thread, from: onAxis(cut, cut.from), to: onAxis(cut, cut.to), core: cut.core, method }],
    stations: [],
    instruction: [`${method === 'tap' ? 'Tap' : 'Screw-cut'} ${cut.name}: ${cut.thread.designation}, full thread from ${cut.from.name} to ${cut.to.name}`],
  };
}

function onAxis(cut: InBore, station: Station): Vector3 {
  const point: [number, number, number] = [...pointAt(...cut.centre, station)];
  point[indexOf(cut.axis)] = station.value;
  return point;
}
