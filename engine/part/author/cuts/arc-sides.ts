import type { Cut } from '../../cut.js';
import type { Sized } from '../../tolerance.js';
import { acrossOf, indexOf, opposite, vectorOf } from '../directions.js';
import { inWords } from '../phrases.js';
import { boundsOf, clear, type Room } from '../room.js';
import { reversed } from '../outlines.js';
import type { Segment } from '../../../geometry/outline.js';
import type { Vector2 } from '../../../geometry/vector.js';
import { lineOf, placedArc, type ArcPlace, type PlacedArc } from './arc.js';
import { axisFrame } from './pocket.js';

/** The two curved sides of a link: all goes that lies outside a band about an arc, as wide as two end radii. */
export interface ArcSidesCut extends ArcPlace {
  readonly id: string;
  readonly name: string;
  /** Of the band's middle line. */
  readonly radius: Sized;
  /** Half the width of the band: the radius of its rounded ends. */
  readonly half: number;
  /** What else lies on the same centre, as in "slot". */
  readonly concentricWith: string;
}

const face = (segment: Omit<Extract<Segment, { kind: 'line' }>, 'kind'>): Segment => ({ kind: 'line', ...segment });

/** Throws RangeError where the stock reaches round the centre, or as `placedArc` does. */
export function arcSides(room: Room, cut: ArcSidesCut): Cut {
  const radius = cut.radius.value;
  const arc = placedArc(cut.name, cut, radius);
  const { at, centre } = arc;
  const [first, last] = arc.angles;
  const [start, stop] = roomAngles(room, arc, cut.name);
  const [low, high] = boundsOf(room, arc.axis, ['open', 'open']);
  const corners = cornersOf(room, arc);
  const far = Math.max(...corners.map(([u, v]) => Math.hypot(u - centre[0], v - centre[1]))) / Math.cos((stop - start) / 2) + clear;
  // The arc is parted at the ends of the band, where the rounded ends go on from it.
  const course = (distance: number, name: string): readonly Segment[] =>
    [start, first, last, stop].slice(1).map((to, i): Segment => ({ kind: 'arc', from: at([start, first, last][i]!, distance), to: at(to, distance), centre, turn: 'left', face: name }));
  const [outside, inside] = [radius + cut.half, radius - cut.half];
  const outer: Segment[] = [
    face({ from: at(start, outside), to: at(start, far), face: 'air' }),
    face({ from: at(start, far), to: at(stop, far), face: 'air' }),
    face({ from: at(stop, far), to: at(stop, outside), face: 'air' }),
    ...reversed(course(outside, 'outer side')),
  ];
  const inner: Segment[] = [
    ...course(inside, 'inner side'),
    face({ from: at(stop, inside), to: centre, face: 'air' }),
    face({ from: centre, to: at(start, inside), face: 'air' }),
  ];
  const form = (outline: readonly Segment[]) => ({ kind: 'prism' as const, frame: axisFrame(arc.axis), outline, low, high, lowFace: 'low end', highFace: 'high end' });
  const none = { stations: [] };
  return {
    id: cut.id,
    name: cut.name,
    forms: [form(outer), form(inner)],
    faces: { 'outer side': none, 'inner side': none, air: none, 'low end': none, 'high end': none },
    sizes: [
      {
        kind: 'arc-sides',
        cut: cut.id,
        centre: arc.inSpace(centre, 0),
        axis: vectorOf(opposite(cut.tool)),
        middle: vectorOf(opposite(cut.toCentre)),
        inner: inside,
        outer: outside,
        ends: [arc.inSpace(at(first, radius), 0), arc.inSpace(at(last, radius), 0)],
        line: lineOf(cut).name,
        concentricWith: cut.concentricWith,
      },
    ],
    stations: [...new Set([...cut.middle, ...cut.ends].map(({ id }) => id))],
    instruction: [
      `Mill ${cut.name}: `,
      inWords({ value: outside, purpose: 'size' }, 'radius'),
      ' and ',
      inWords({ value: inside, purpose: 'size' }, 'radius'),
      ` about the centre of the ${cut.concentricWith}, on the ${lineOf(cut).name}`,
    ],
  };
}

const cornersOf = (room: Room, arc: PlacedArc): readonly Vector2[] => {
  const [u, v] = acrossOf(arc.axis);
  const span = (i: 0 | 1 | 2): readonly [number, number] => [room.low[i] - clear, room.high[i] + clear];
  return span(indexOf(u)).flatMap((a) => span(indexOf(v)).map((b): Vector2 => [a, b]));
};

/** The angles between which the stock is seen from the centre, a little to spare. */
function roomAngles(room: Room, arc: PlacedArc, name: string): readonly [number, number] {
  const offsets = cornersOf(room, arc).map(([u, v]) => {
    const offset = Math.atan2(v - arc.centre[1], u - arc.centre[0]) - arc.middle;
    return Math.atan2(Math.sin(offset), Math.cos(offset));
  });
  const [least, most] = [Math.min(...offsets), Math.max(...offsets)];
  if (most - least > Math.PI * 0.9 || Math.max(-least, most) > Math.PI / 2) throw new RangeError(`the stock reaches round the centre of the ${name}`);
  return [arc.middle + least - 0.02, arc.middle + most + 0.02];
}
