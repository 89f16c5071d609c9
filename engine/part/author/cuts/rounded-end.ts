import type { Cut } from '../../cut.js';
import type { Axis, Direction, Station } from '../../station.js';
import type { Sized } from '../../tolerance.js';
import { acrossOf, axisOf, indexOf, pointAt, senseOf, vectorOf } from '../directions.js';
import { inWords, placeInWords } from '../phrases.js';
import { boundsOf, reachFrom, type Room, type Span } from '../room.js';
import type { Segment } from '../../../geometry/outline.js';
import type { Vector2 } from '../../../geometry/vector.js';
import { reversed } from '../outlines.js';
import { axisFrame } from './pocket.js';

/** An end rounded about a centre: all beyond the centre, toward `end`, that lies outside the radius goes. */
export interface RoundedEndCut {
  readonly id: string;
  readonly name: string;
  /** The axis about which the end is round. */
  readonly axis: Axis;
  readonly centre: readonly [Station, Station];
  readonly radius: Sized;
  readonly end: Direction;
  readonly across?: Span;
}

export function roundedEnd(room: Room, cut: RoundedEndCut): Cut {
  const [u, v] = acrossOf(cut.axis);
  const run = axisOf(cut.end);
  const sense = senseOf(cut.end);
  const centre = pointAt(...cut.centre, { id: '', axis: cut.axis, name: '', value: 0, placing: { kind: 'datum' } });
  const radius = cut.radius.value;
  const far = reachFrom(room, centre) + radius;
  // (along the end, across it) to the frame's (u, v).
  const at = (along: number, side: number): Vector2 => {
    const value = (axis: Axis): number => centre[indexOf(axis)] + (axis === run ? along * sense : side);
    return [value(u), value(v)];
  };
  const line = (from: Vector2, to: Vector2, face: string): Segment => ({ kind: 'line', from, to, face });
  // (along, side) to (u, v) turns the sense of rotation when it mirrors.
  const mirrored = (run === u) === (sense < 0);
  const outline: Segment[] = [
    { kind: 'arc', from: at(0, -radius), to: at(radius, 0), centre: at(0, 0), turn: mirrored ? 'right' : 'left', face: 'round' },
    { kind: 'arc', from: at(radius, 0), to: at(0, radius), centre: at(0, 0), turn: mirrored ? 'right' : 'left', face: 'round' },
    line(at(0, radius), at(0, far), 'side'),
    line(at(0, far), at(far, far), 'air'),
    line(at(far, far), at(far, -far), 'air'),
    line(at(far, -far), at(0, -far), 'air'),
    line(at(0, -far), at(0, -radius), 'side'),
  ];
  const [low, high] = boundsOf(room, cut.axis, cut.across ?? ['open', 'open']);
  const toward = vectorOf(cut.end);
  return {
    id: cut.id,
    name: cut.name,
    forms: [
      {
        kind: 'prism',
        frame: axisFrame(cut.axis),
        // The removed side lies outside the arc, so the loop as written runs clockwise in a right-handed reading.
        outline: mirrored ? outline : reversed(outline),
        low,
        high,
        lowFace: 'low end',
        highFace: 'high end',
      },
    ],
    faces: { round: { stations: [] }, side: { stations: [] }, air: { stations: [] }, 'low end': { stations: [] }, 'high end': { stations: [] } },
    sizes: [
      { kind: 'radius', cut: cut.id, radius: cut.radius, centres: [centre], axis: vectorOf(`+${cut.axis}`), toward: [toward], within: 80 },
    ],
    stations: cut.centre.map((station) => station.id),
    instruction: [`Round ${cut.name}: `, inWords(cut.radius, 'radius'), ' about ', ...placeInWords(cut.centre[0]), ', ', ...placeInWords(cut.centre[1])],
  };
}
