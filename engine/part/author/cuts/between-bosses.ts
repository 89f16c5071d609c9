import type { Cut } from '../../cut.js';
import type { Axis, Direction, Station } from '../../station.js';
import type { Sized } from '../../tolerance.js';
import { acrossOf, axisOf, indexOf, pointAt, senseOf, vectorOf } from '../directions.js';
import { inWords, placeInWords } from '../phrases.js';
import { boundsOf, clear, type Room } from '../room.js';
import { reversed } from '../outlines.js';
import type { Segment } from '../../../geometry/outline.js';
import { unit, type Vector2, type Vector3 } from '../../../geometry/vector.js';
import { axisFrame } from './pocket.js';

/** A round boss about two stations. */
export interface Boss {
  readonly centre: readonly [Station, Station];
  readonly radius: number;
}

/**
 * One edge of a rod milled down between two round bosses: as far as `edge`, with a fillet up to each boss, which stays round
 * from there to its top. All beyond, toward `side`, goes.
 */
export interface BetweenBossesCut {
  readonly id: string;
  readonly name: string;
  /** Axis about which the bosses are round. */
  readonly axis: Axis;
  readonly bosses: readonly [Boss, Boss];
  readonly edge: Station;
  readonly side: Direction;
  /** Radius of the cutter, which it leaves in the corner to each boss. */
  readonly fillet: Sized;
}

/** Throws RangeError where the bosses do not stand on one line in order, do not rise above the edge, or have no room between. */
export function betweenBosses(room: Room, cut: BetweenBossesCut): Cut {
  const across = axisOf(cut.side);
  const run = (['x', 'y', 'z'] as const).find((axis) => axis !== cut.axis && axis !== across)!;
  const level: Station = { id: '', axis: cut.axis, name: '', value: 0, placing: { kind: 'datum' } };
  const [first, second] = cut.bosses.map(({ centre }) => pointAt(...centre, level)) as [Vector3, Vector3];
  const sense = senseOf(cut.side);
  const length = second[indexOf(run)] - first[indexOf(run)];
  const edge = (cut.edge.value - first[indexOf(across)]) * sense;
  if (cut.edge.axis !== across || Math.abs(first[indexOf(across)] - second[indexOf(across)]) > 1e-6 || !(length > 0)) throw new RangeError(`the bosses of the ${cut.name} do not stand in order on one line`);
  const fillet = cut.fillet.value;
  const [big, small] = [cut.bosses[0].radius, cut.bosses[1].radius];
  // How far along the middle of a fillet stands that touches edge and boss.
  const standOff = (radius: number): number => Math.sqrt((radius + fillet) ** 2 - (edge + fillet) ** 2);
  if (!(edge < big && edge < small)) throw new RangeError(`the bosses do not rise above the ${cut.name}`);
  const [a, b] = [standOff(big), length - standOff(small)];
  if (!(a < b)) throw new RangeError(`the ${cut.name} has no room between its bosses`);
  const [u] = acrossOf(cut.axis);
  const at = (along: number, out: number): Vector2 => {
    const [p, q] = [first[indexOf(run)] + along, first[indexOf(across)] + sense * out];
    return u === run ? [p, q] : [q, p];
  };
  const mirrored = (u === run) === sense < 0;
  const left = mirrored ? 'right' : 'left';
  const right = mirrored ? 'left' : 'right';
  const touch = (along: number, from: number, radius: number): Vector2 => {
    const share = radius / (radius + fillet);
    return at(from + (along - from) * share, (edge + fillet) * share);
  };
  const reach = (sense > 0 ? room.high[indexOf(across)] - first[indexOf(across)] : first[indexOf(across)] - room.low[indexOf(across)]) + clear;
  const outline: Segment[] = [
    { kind: 'arc', from: at(0, big), to: touch(a, 0, big), centre: at(0, 0), turn: right, face: 'first boss' },
    { kind: 'arc', from: touch(a, 0, big), to: at(a, edge), centre: at(a, edge + fillet), turn: left, face: 'fillet' },
    { kind: 'line', from: at(a, edge), to: at(b, edge), face: 'edge' },
    { kind: 'arc', from: at(b, edge), to: touch(b, length, small), centre: at(b, edge + fillet), turn: left, face: 'fillet' },
    { kind: 'arc', from: touch(b, length, small), to: at(length, small), centre: at(length, 0), turn: right, face: 'second boss' },
    { kind: 'line', from: at(length, small), to: at(length, reach), face: 'air' },
    { kind: 'line', from: at(length, reach), to: at(0, reach), face: 'air' },
    { kind: 'line', from: at(0, reach), to: at(0, big), face: 'air' },
  ];
  const [low, high] = boundsOf(room, cut.axis, ['open', 'open']);
  const inSpace = ([p, q]: Vector2): Vector3 => {
    const [m, n] = acrossOf(cut.axis);
    const point: [number, number, number] = [0, 0, 0];
    point[indexOf(m)] = p;
    point[indexOf(n)] = q;
    return point;
  };
  const toward = (centre: Vector2, from: Vector2, to: Vector2): Vector3 => {
    const ways = [from, to].map((end) => unit([end[0] - centre[0], end[1] - centre[1], 0]));
    return unit(inSpace([ways[0]![0] + ways[1]![0], ways[0]![1] + ways[1]![1]]));
  };
  const centres = [at(a, edge + fillet), at(b, edge + fillet)] as const;
  const none = { stations: [] };
  return {
    id: cut.id,
    name: cut.name,
    forms: [{ kind: 'prism', frame: axisFrame(cut.axis), outline: mirrored ? reversed(outline) : outline, low, high, lowFace: 'low end', highFace: 'high end' }],
    faces: { edge: { stations: [cut.edge.id] }, fillet: none, 'first boss': none, 'second boss': none, air: none, 'low end': none, 'high end': none },
    sizes: [
      {
        kind: 'radius',
        cut: cut.id,
        radius: cut.fillet,
        centres: centres.map(inSpace),
        axis: vectorOf(`+${cut.axis}`),
        toward: [toward(centres[0], touch(a, 0, big), at(a, edge)), toward(centres[1], touch(b, length, small), at(b, edge))],
      },
    ],
    stations: [cut.edge.id],
    instruction: [`Mill ${cut.name}: `, ...placeInWords(cut.edge), '; corners ', inWords(cut.fillet, 'radius'), ' into both bosses'],
  };
}
