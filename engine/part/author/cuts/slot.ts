import type { Cut } from '../../cut.js';
import type { Direction, Station } from '../../station.js';
import { acrossOf, axisOf, pointAt, senseOf, vectorOf } from '../directions.js';
import { joined, placeInWords, spanInWords } from '../phrases.js';
import { boundsOf, type Room } from '../room.js';
import { reversed } from '../outlines.js';
import { sized } from '../stations.js';
import type { Segment } from '../../../geometry/outline.js';
import type { Vector2 } from '../../../geometry/vector.js';
import { axisFrame } from './pocket.js';

/** A straight slot or flute with full-round ends, as an end mill of its own width leaves it. No floor: right through. */
export interface SlotCut {
  readonly id: string;
  readonly name: string;
  /** The way the cutter points. */
  readonly tool: Direction;
  readonly entry: Station;
  readonly floor?: Station;
  /** The line along which it runs, midway between its walls. */
  readonly middle: Station;
  readonly walls: readonly [Station, Station];
  /** The middles of its rounded ends, low first. */
  readonly ends: readonly [Station, Station];
  readonly texture?: number;
}

/** Throws RangeError for stations on the wrong axes or in the wrong order, and walls that are not midway about the line. */
export function slot(room: Room, cut: SlotCut): Cut {
  const axis = axisOf(cut.tool);
  const run = cut.ends[0].axis;
  const across = cut.walls[0].axis;
  if (new Set([axis, run, across]).size < 3 || cut.entry.axis !== axis || cut.middle.axis !== across) throw new RangeError(`the stations of the ${cut.name} do not lie along three axes`);
  const [start, stop] = [cut.ends[0].value, cut.ends[1].value];
  const [near, far] = [cut.walls[0].value, cut.walls[1].value];
  const half = (far - near) / 2;
  if (!(start < stop && half > 0)) throw new RangeError(`the ${cut.name} runs from ${start} to ${stop}, ${near} to ${far} across: the low one comes first`);
  if (Math.abs((near + far) / 2 - cut.middle.value) > 1e-6) throw new RangeError(`the walls of the ${cut.name} are not midway about the ${cut.middle.name}`);
  const [u] = acrossOf(axis);
  const upright = u !== run;
  const at = (along: number, side: number): Vector2 => (upright ? [cut.middle.value + side, along] : [along, cut.middle.value + side]);
  const arc = (along: number, from: number, to: number): Segment => ({ kind: 'arc', from: at(along, from), to: at(along, to), centre: at(along, 0), turn: upright ? 'right' : 'left', face: 'end' });
  const outline: Segment[] = [
    { kind: 'line', from: at(start, -half), to: at(stop, -half), face: `low ${across}` },
    arc(stop, -half, half),
    { kind: 'line', from: at(stop, half), to: at(start, half), face: `high ${across}` },
    arc(start, half, -half),
  ];
  const down = senseOf(cut.tool) < 0;
  const floor = cut.floor ?? 'open';
  const [low, high] = boundsOf(room, axis, down ? [floor, 'open'] : ['open', floor]);
  const texture = cut.texture === undefined ? {} : { texture: cut.texture };
  const way = vectorOf(`+${run}`);
  const back = vectorOf(`-${run}`);
  const middleAt = (end: Station) => pointAt(end, cut.middle, cut.entry);
  return {
    id: cut.id,
    name: cut.name,
    forms: [{ kind: 'prism', frame: axisFrame(axis), outline: upright ? reversed(outline) : outline, low, high, lowFace: `low ${axis}`, highFace: `high ${axis}` }],
    faces: {
      [`low ${across}`]: { stations: [cut.walls[0].id] },
      [`high ${across}`]: { stations: [cut.walls[1].id] },
      end: { stations: [] },
      [`low ${axis}`]: { stations: [] },
      [`high ${axis}`]: { stations: [] },
      [`${down ? 'low' : 'high'} ${axis}`]: { stations: cut.floor === undefined ? [] : [cut.floor.id], ...texture },
    },
    sizes: [{ kind: 'radius', cut: cut.id, radius: sized(half), centres: cut.ends.map(middleAt), axis: vectorOf(cut.tool), toward: [back, way], full: true }],
    stations: [...cut.walls, ...cut.ends, ...(cut.floor === undefined ? [] : [cut.floor])].map(({ id }) => id),
    instruction: [
      `Mill ${cut.name}: `,
      ...joined([
        spanInWords(across, cut.walls),
        ['middles of the ends ', ...placeInWords(cut.ends[0]), ' and ', ...placeInWords(cut.ends[1])],
        cut.floor === undefined ? ['through'] : ['floor ', ...placeInWords(cut.floor)],
      ]),
    ],
  };
}
