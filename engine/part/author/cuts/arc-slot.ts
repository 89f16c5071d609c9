import type { ArcSlotSize, Cut } from '../../cut.js';
import type { Station } from '../../station.js';
import type { Sized } from '../../tolerance.js';
import { opposite, senseOf, vectorOf } from '../directions.js';
import { inWords, joined, placeInWords, spanInWords } from '../phrases.js';
import { boundsOf, type Room } from '../room.js';
import { lineOf, placedArc, type ArcPlace } from './arc.js';
import { axisFrame } from './pocket.js';

/** A slot along an arc with full-round ends, as a swinging or rotary set-up mills it. No floor: right through. */
export interface ArcSlotCut extends ArcPlace {
  readonly id: string;
  readonly name: string;
  /** Of the slot's middle line. */
  readonly radius: Sized;
  readonly width: Sized;
  /** The middles of its rounded ends. */
  readonly ends: readonly [Station, Station];
  /** The face that the cutter enters. */
  readonly entry: Station;
  readonly floor?: Station;
  /** What else stands on the middle line, as in "holes": said with its radius. */
  readonly also?: string;
  readonly texture?: number;
}

/** Throws RangeError where the slot is wider than its circle, or as `placedArc` does. */
export function arcSlot(room: Room, cut: ArcSlotCut): Cut {
  const radius = cut.radius.value;
  const half = cut.width.value / 2;
  if (!(half > 0 && half < radius)) throw new RangeError(`the ${cut.name} is ${cut.width.value} wide on a radius of ${radius}`);
  const arc = placedArc(cut.name, cut, radius);
  const [first, last] = arc.angles;
  const { at, centre } = arc;
  const down = senseOf(cut.tool) < 0;
  const floor = cut.floor ?? 'open';
  const [low, high] = boundsOf(room, arc.axis, down ? [floor, 'open'] : ['open', floor]);
  const texture = cut.texture === undefined ? {} : { texture: cut.texture };
  const floorFace = `${down ? 'low' : 'high'} ${arc.axis}`;
  const size: ArcSlotSize = {
    kind: 'arc-slot',
    cut: cut.id,
    centre: arc.inSpace(centre, cut.entry.value),
    axis: vectorOf(opposite(cut.tool)),
    middle: vectorOf(opposite(cut.toCentre)),
    radius: cut.radius,
    width: cut.width,
    ends: [arc.inSpace(at(first, radius), cut.entry.value), arc.inSpace(at(last, radius), cut.entry.value)],
    line: lineOf(cut).name,
    ...(cut.also === undefined ? {} : { also: cut.also }),
    through: cut.floor === undefined,
  };
  return {
    id: cut.id,
    name: cut.name,
    forms: [
      {
        kind: 'prism',
        frame: axisFrame(arc.axis),
        outline: [
          { kind: 'arc', from: at(first, radius + half), to: at(last, radius + half), centre, turn: 'left', face: 'outer wall' },
          { kind: 'arc', from: at(last, radius + half), to: at(last, radius - half), centre: at(last, radius), turn: 'left', face: 'end' },
          { kind: 'arc', from: at(last, radius - half), to: at(first, radius - half), centre, turn: 'right', face: 'inner wall' },
          { kind: 'arc', from: at(first, radius - half), to: at(first, radius + half), centre: at(first, radius), turn: 'left', face: 'end' },
        ],
        low,
        high,
        lowFace: `low ${arc.axis}`,
        highFace: `high ${arc.axis}`,
      },
    ],
    faces: {
      'outer wall': { stations: [], ...texture },
      'inner wall': { stations: [], ...texture },
      end: { stations: [] },
      [`low ${arc.axis}`]: { stations: [] },
      [`high ${arc.axis}`]: { stations: [] },
      [floorFace]: { stations: cut.floor === undefined ? [] : [cut.floor.id] },
    },
    sizes: [size],
    stations: [...new Set([...cut.middle, ...cut.ends, ...(cut.floor === undefined ? [] : [cut.floor])].map(({ id }) => id))],
    instruction: [
      `Mill ${cut.name}: `,
      ...joined([
        [inWords(cut.width), ' wide on ', inWords(cut.radius, 'radius'), ` (middle line), centre on the ${lineOf(cut).name}`],
        ['middles of the ends ', ...spanInWords(cut.ends[0].axis, cut.ends)],
        cut.floor === undefined ? ['through'] : ['floor ', ...placeInWords(cut.floor)],
      ]),
    ],
  };
}
