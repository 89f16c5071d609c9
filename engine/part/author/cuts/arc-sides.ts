import type { Cut } from '../../cut.js';
import type { Sized } from '../../tolerance.js';
import { acrossOf, indexOf, opposite, vectorOf } from '../directions.js';
import { inWords } from '../phrases.js';
import { boundsOf, clear, reachFrom, type Room } from '../room.js';
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

/** An end rounded where a band along an arc ends: beyond the arc's end all goes that lies outside the radius. */
export interface ArcEndCut extends ArcPlace {
  readonly id: string;
  readonly name: string;
  /** Of the band's middle line. */
  readonly arcRadius: number;
  readonly radius: Sized;
  /** Which of the two ends. */
  readonly end: 'low' | 'high';
}

/** Throws RangeError as `placedArc` does. */
export function arcEnd(room: Room, cut: ArcEndCut): Cut {
  const arc = placedArc(cut.name, cut, cut.arcRadius);
  const station = cut.ends[cut.end === 'low' ? 0 : 1];
  const [u] = acrossOf(arc.axis);
  const run = station.axis === u ? 0 : 1;
  const angle = arc.angles.find((each) => Math.abs(arc.at(each, cut.arcRadius)[run] - station.value) < 1e-6)!;
  const sense = angle === arc.angles[1] ? 1 : -1;
  const middle = arc.at(angle, cut.arcRadius);
  const radius = cut.radius.value;
  const way: Vector2 = [-sense * Math.sin(angle), sense * Math.cos(angle)];
  const out: Vector2 = [Math.cos(angle), Math.sin(angle)];
  const point = (along: number, side: number): Vector2 => [middle[0] + way[0] * along + out[0] * side, middle[1] + way[1] * along + out[1] * side];
  const far = reachFrom(room, arc.inSpace(middle, room.low[indexOf(arc.axis)])) + radius;
  // Along the end and across it make a left-handed pair at the higher angle.
  const turn = sense > 0 ? 'right' : 'left';
  const outline: Segment[] = [
    { kind: 'arc', from: point(0, -radius), to: point(radius, 0), centre: middle, turn, face: 'round' },
    { kind: 'arc', from: point(radius, 0), to: point(0, radius), centre: middle, turn, face: 'round' },
    face({ from: point(0, radius), to: point(0, far), face: 'side' }),
    face({ from: point(0, far), to: point(far, far), face: 'air' }),
    face({ from: point(far, far), to: point(far, -far), face: 'air' }),
    face({ from: point(far, -far), to: point(0, -far), face: 'air' }),
    face({ from: point(0, -far), to: point(0, -radius), face: 'side' }),
  ];
  const [low, high] = boundsOf(room, arc.axis, ['open', 'open']);
  const none = { stations: [] };
  const tip = arc.inSpace(way, 0);
  return {
    id: cut.id,
    name: cut.name,
    forms: [{ kind: 'prism', frame: axisFrame(arc.axis), outline: sense > 0 ? outline : reversed(outline), low, high, lowFace: 'low end', highFace: 'high end' }],
    faces: { round: none, side: none, air: none, 'low end': none, 'high end': none },
    sizes: [{ kind: 'radius', cut: cut.id, radius: cut.radius, centres: [arc.inSpace(middle, 0)], axis: vectorOf(opposite(cut.tool)), toward: [tip], within: 80 }],
    stations: [station.id],
    instruction: [`Round ${cut.name}: `, inWords(cut.radius, 'radius'), ` about the ${station.name}`],
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
