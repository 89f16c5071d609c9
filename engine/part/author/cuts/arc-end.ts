import type { Cut } from '../../cut.js';
import type { Sized } from '../../tolerance.js';
import { acrossOf, indexOf, opposite, vectorOf } from '../directions.js';
import { inWords } from '../phrases.js';
import { boundsOf, reachFrom, type Room } from '../room.js';
import { reversed } from '../outlines.js';
import type { Segment } from '../../../geometry/outline.js';
import type { Vector2 } from '../../../geometry/vector.js';
import { placedArc, type ArcPlace } from './arc.js';
import { axisFrame } from './pocket.js';

const face = (segment: Omit<Extract<Segment, { kind: 'line' }>, 'kind'>): Segment => ({ kind: 'line', ...segment });

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
