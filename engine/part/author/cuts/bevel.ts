import type { AngleSize, Cut } from '../../cut.js';
import type { Axis, Direction, Station } from '../../station.js';
import { acrossOf, axisOf, indexOf, opposite, senseOf, vectorOf } from '../directions.js';
import { polygonOutline } from '../outlines.js';
import { placeInWords } from '../phrases.js';
import { boundsOf, clear, type Room, type Span } from '../room.js';
import { add, scale, type Vector2, type Vector3 } from '../../../geometry/vector.js';
import { axisFrame } from './pocket.js';

/**
 * A flat face at an angle. It starts on the line where the coordinates are those of `start`, runs the way `along`, leaning
 * `into` the material by `angle` degrees, and ends at `until`. It reaches `across` from end to end.
 */
export interface BevelCut {
  readonly id: string;
  readonly name: string;
  readonly start: readonly [Station, Station];
  readonly along: Direction;
  readonly into: Direction;
  readonly angle: number;
  readonly until: Station;
  readonly across?: Span;
}

export function bevel(room: Room, cut: BevelCut): Cut {
  const run = axisOf(cut.along);
  const lean = axisOf(cut.into);
  const sweep = (['x', 'y', 'z'] as const).find((axis) => axis !== run && axis !== lean) as Axis;
  const [u, v] = acrossOf(sweep);
  const coordinate = (axis: Axis): number => {
    const station = cut.start.find((each) => each.axis === axis);
    if (station === undefined) throw new RangeError(`the start of the ${cut.name} has no station on ${axis}`);
    return station.value;
  };
  const at = (alongBy: number, intoBy: number): Vector2 => {
    const value = (axis: Axis): number =>
      coordinate(axis) + (axis === run ? alongBy * senseOf(cut.along) : intoBy * senseOf(cut.into));
    return [value(u), value(v)];
  };
  const length = (cut.until.value - coordinate(run)) * senseOf(cut.along);
  if (!(length > 0)) throw new RangeError(`the ${cut.name} ends before it starts`);
  const slope = Math.tan((cut.angle * Math.PI) / 180);
  // The cutter leaves on the far side of the stock, so the outline's outer edge lies well outside it.
  const index = indexOf(lean);
  const outside = senseOf(cut.into) > 0 ? coordinate(lean) - room.low[index] : room.high[index] - coordinate(lean);
  const out = -(outside + clear);
  const back = out / slope;
  const corners: Vector2[] = [at(back, out), at(length, length * slope), at(length, out)];
  const outline = polygonOutline(corners, ['bevel', 'end', 'open']);
  const [low, high] = boundsOf(room, sweep, cut.across ?? ['open', 'open']);
  const middle: [number, number, number] = [0, 0, 0];
  middle[indexOf(run)] = coordinate(run);
  middle[indexOf(lean)] = coordinate(lean);
  middle[indexOf(sweep)] = (low + high) / 2;
  const angle: AngleSize = {
    kind: 'angle',
    cut: cut.id,
    corner: middle,
    a: vectorOf(cut.along),
    b: direction(cut.along, cut.into, cut.angle),
    degrees: cut.angle,
  };
  const runStart = cut.start.find((each) => each.axis === run) as Station;
  return {
    id: cut.id,
    name: cut.name,
    forms: [{ kind: 'prism', frame: axisFrame(sweep), outline, low, high, lowFace: 'low end', highFace: 'high end' }],
    faces: { bevel: { stations: [], bounds: [runStart.id] }, end: { stations: [cut.until.id] }, open: { stations: [] }, 'low end': { stations: [] }, 'high end': { stations: [] } },
    sizes: [angle],
    stations: [runStart.id],
    instruction: [`Mill ${cut.name} at ${cut.angle}° to ${run.toUpperCase()}, starting `, ...placeInWords(runStart)],
  };
}

/** The direction that leans from `along` toward `into` by `angle` degrees. */
function direction(along: Direction, into: Direction, angle: number): Vector3 {
  const radians = (angle * Math.PI) / 180;
  return add(scale(vectorOf(along), Math.cos(radians)), scale(vectorOf(into), Math.sin(radians)));
}

/** Which way a bevel's set-up points up: square to the bevel, out of the material. */
export const bevelNormal = (along: Direction, into: Direction, angle: number): Vector3 =>
  direction(opposite(into), opposite(along), -angle);
