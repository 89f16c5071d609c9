import type { Cut, ThreadSize } from '../../cut.js';
import type { Direction, Station } from '../../station.js';
import type { Sized } from '../../tolerance.js';
import { axisOf, opposite, pointAt, senseOf, vectorOf } from '../directions.js';
import { polygonOutline } from '../outlines.js';
import { inWords } from '../phrases.js';
import { clear } from '../room.js';
import { holeFrame } from './hole.js';
import { axisFrame } from './pocket.js';
import type { Vector2 } from '../../../geometry/vector.js';

interface OnEnd {
  readonly id: string;
  readonly name: string;
  readonly centre: readonly [Station, Station];
  /** The end face. */
  readonly at: Station;
  /** Along the axis, out of the material. */
  readonly outward: Direction;
}

/** A chamfer on the edge of a turned end, outside or inside. */
export interface TurnedChamferCut extends OnEnd {
  /** Diameter of the edge before chamfering, mm. */
  readonly diameter: number;
  readonly leg: Sized;
  /** To the axis, 45 unless said. */
  readonly angle?: number;
  readonly internal?: boolean;
}

export function turnedChamfer(cut: TurnedChamferCut): Cut {
  const axis = axisOf(cut.outward);
  const sense = senseOf(cut.outward);
  const angle = cut.angle ?? 45;
  const internal = cut.internal === true;
  const rise = cut.leg.value * Math.tan((angle * Math.PI) / 180) * (internal ? 1 : -1);
  const edge = cut.diameter / 2;
  const inner = cut.at.value - sense * cut.leg.value;
  const corners: Vector2[] = internal
    ? [[0, inner], [edge, inner], [edge + rise, cut.at.value], [0, cut.at.value]]
    : [[edge, inner], [edge + rise, cut.at.value], [edge + rise, cut.at.value + sense * clear], [edge + clear, cut.at.value + sense * clear], [edge + clear, inner]];
  const names = internal ? ['floor', 'chamfer', 'mouth', 'axis'] : ['chamfer', 'air', 'air', 'air', 'air'];
  return {
    id: cut.id,
    name: cut.name,
    forms: [{ kind: 'revolution', frame: axisFrame(axis, cut.centre), outline: polygonOutline(corners, names) }],
    faces: { chamfer: { stations: [] }, air: { stations: [] }, floor: { stations: [] }, mouth: { stations: [] }, axis: { stations: [] } },
    sizes: [
      {
        kind: 'chamfer',
        cut: cut.id,
        ring: {
          point: pointAt(...cut.centre, { ...cut.at, value: (cut.at.value + inner) / 2 }),
          axis: vectorOf(`+${axis}`),
          radius: edge + rise / 2,
        },
        outward: vectorOf(cut.outward),
        internal,
        leg: cut.leg,
        angle,
      },
    ],
    stations: [],
    instruction: [`Chamfer ${cut.name}: `, inWords(cut.leg), ` x ${angle}°`],
  };
}

/** A combined drill and countersink for the tailstock centre, lengths mm. */
export interface CentreDrill {
  readonly designation: string;
  readonly pilot: number;
  readonly pilotLength: number;
  readonly body: number;
}

/** A centre hole, 60 degrees, as deep as makes its mouth `outside` wide. */
export interface CentreHoleCut extends OnEnd {
  readonly drill: CentreDrill;
  readonly outside: number;
}

export function centreHole(cut: CentreHoleCut): Cut {
  const inward = vectorOf(opposite(cut.outward));
  const mouth = cut.outside / 2;
  const pilot = cut.drill.pilot / 2;
  const cone = (mouth - pilot) / Math.tan(Math.PI / 6);
  const end = cone + cut.drill.pilotLength;
  const tip = end + pilot / Math.tan((59 * Math.PI) / 180);
  const outline = polygonOutline(
    [[0, -0.2], [mouth, -0.2], [mouth, 0], [pilot, cone], [pilot, end], [0, tip]],
    ['mouth', 'rim', 'cone', 'pilot', 'point', 'axis'],
  );
  const point = pointAt(...cut.centre, cut.at);
  const plain = { stations: [] };
  return {
    id: cut.id,
    name: cut.name,
    forms: [{ kind: 'revolution', frame: holeFrame(point, inward), outline }],
    faces: { mouth: plain, rim: plain, cone: plain, pilot: plain, point: plain, axis: plain },
    sizes: [
      {
        kind: 'centre-hole',
        cut: cut.id,
        point,
        direction: inward,
        designation: cut.drill.designation,
        pilot: cut.drill.pilot,
        outside: cut.outside,
      },
    ],
    stations: [],
    instruction: [`Centre ${cut.name}: ${cut.drill.designation}, mouth `, { length: cut.outside, sign: 'diameter' }],
  };
}

/** A thread on a turned diameter, from the end at which the die starts as far as `to`. */
export interface ExternalThreadCut {
  readonly id: string;
  readonly name: string;
  readonly centre: readonly [Station, Station];
  readonly from: Station;
  readonly to: Station;
  readonly thread: ThreadSize;
  /** Root of the screw, mm. */
  readonly root: number;
}

export function externalThread(cut: ExternalThreadCut): Cut {
  return {
    id: cut.id,
    name: cut.name,
    forms: [],
    faces: {},
    sizes: [
      {
        kind: 'external-thread',
        cut: cut.id,
        thread: cut.thread,
        from: pointAt(...cut.centre, cut.from),
        to: pointAt(...cut.centre, cut.to),
        root: cut.root,
      },
    ],
    stations: [],
    instruction: [`Thread ${cut.name}: ${cut.thread.designation} to ${cut.to.name}`],
  };
}
