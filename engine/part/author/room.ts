import type { Vector3 } from '../../geometry/vector.js';
import type { Axis, Station } from '../station.js';
import { indexOf } from './directions.js';

/** The box that the stock fills; open cuts run `clear` mm beyond it. */
export interface Room {
  readonly low: Vector3;
  readonly high: Vector3;
}

/** How far an open cut runs out of the stock, mm. */
export const clear = 2;

/** One end of a cut along an axis: at a station, or out through the stock. */
export type End = Station | 'open';

/** The two ends of a cut along an axis, low end first. */
export type Span = readonly [End, End];

/** The coordinates between which a span runs. Throws RangeError when they are in the wrong order. */
export function boundsOf(room: Room, axis: Axis, span: Span): readonly [number, number] {
  const index = indexOf(axis);
  const low = span[0] === 'open' ? room.low[index] - clear : span[0].value;
  const high = span[1] === 'open' ? room.high[index] + clear : span[1].value;
  if (!(low < high)) throw new RangeError(`a cut runs from ${low} to ${high} along ${axis}`);
  return [low, high];
}

/** How far the corner of the room that is farthest from a point stands, mm. */
export function reachFrom(room: Room, point: Vector3): number {
  let reach = 0;
  for (const x of [room.low[0], room.high[0]])
    for (const y of [room.low[1], room.high[1]])
      for (const z of [room.low[2], room.high[2]])
        reach = Math.max(reach, Math.hypot(x - point[0], y - point[1], z - point[2]));
  return reach + clear;
}
