import type { Cut, CutFace, HoleSize, Phrase, PitchCircle } from '../../cut.js';
import type { Direction, Station } from '../../station.js';
import type { Sized } from '../../tolerance.js';
import { axisOf, indexOf, pointAt, senseOf, vectorOf } from '../directions.js';
import { polygonOutline } from '../outlines.js';
import { inWords, joined, placeInWords } from '../phrases.js';
import { clear, reachFrom, type Room } from '../room.js';
import { finishInWords, finishOf, type FinishAsked } from './finish-depth.js';
import { frameAlong } from '../../../geometry/frame.js';
import { add, cross, dot, scale, type Vector2, type Vector3 } from '../../../geometry/vector.js';

/** Where a group of like holes is: entry face, way in, and a pair of stations for each hole. */
export interface HolePlaces {
  readonly entry: Station;
  /** Into the material. */
  readonly direction: Direction;
  /** Leans the way in toward another direction by so many degrees. */
  readonly tilt?: { readonly toward: Direction; readonly angle: number };
  /** For each hole, the stations on the two axes across the entry face's axis. */
  readonly at: readonly (readonly [Station, Station])[];
  /** Instead of `at` (leave that empty): holes equally spaced on a circle, the first at `start` degrees from `zero`. */
  readonly circle?: {
    readonly centre: readonly [Station, Station];
    readonly diameter: Sized;
    readonly count: number;
    readonly start: number;
    readonly zero: Direction;
  };
}

/** Round holes of one size, drilled, reamed, bored or milled. */
export interface HoleCut extends HolePlaces {
  readonly id: string;
  readonly name: string;
  readonly diameter: Sized;
  /** Full-diameter depth below the entry; absent for through. */
  readonly depth?: Sized;
  /** Where a hole without a depth stops short of the far side: the station it runs to, and what is there. */
  readonly into?: { readonly station: Station; readonly name: string };
  /** Included angle of the drill's point, 118 unless said; 180 for a flat bottom. */
  readonly pointAngle?: number;
  readonly finish?: 'drilled' | 'reamed' | 'bored' | 'milled';
  /** Name of the drill or reamer. */
  readonly tool?: string;
  readonly texture?: number;
  /** The diameter is finished only so deep. */
  readonly finishTo?: FinishAsked;
}

const verbs = { drilled: 'Drill', reamed: 'Ream', bored: 'Bore', milled: 'Mill' } as const;

/** The way in, as a vector of length one. Throws RangeError where it leans along itself. */
export function wayIn(places: HolePlaces): Vector3 {
  const straight = vectorOf(places.direction);
  if (places.tilt === undefined) return straight;
  if (axisOf(places.tilt.toward) === axisOf(places.direction)) throw new RangeError(`holes that enter ${places.direction} cannot lean toward ${places.tilt.toward}`);
  const radians = (places.tilt.angle * Math.PI) / 180;
  return add(scale(straight, Math.cos(radians)), scale(vectorOf(places.tilt.toward), Math.sin(radians)));
}

/**
 * Where each hole's axis meets the entry face. Throws RangeError for no place at all, an entry across the way in, and a
 * circle whose zero does not lie in that face or whose count is no count.
 */
export function entryPoints(places: HolePlaces): readonly Vector3[] {
  const { circle } = places;
  if (axisOf(places.direction) !== places.entry.axis) throw new RangeError(`holes enter ${places.direction} at a station of the ${places.entry.axis} axis`);
  if (circle === undefined && places.at.length === 0) throw new RangeError('holes need a place at least');
  if (circle !== undefined && !(Number.isInteger(circle.count) && circle.count > 0)) throw new RangeError(`${circle.count} is no count of holes on a circle`);
  if (circle === undefined) return places.at.map((pair) => pointAt(...pair, places.entry));
  const out = scale(vectorOf(places.direction), -1);
  const zero = vectorOf(circle.zero);
  if (Math.abs(dot(out, zero)) > 1e-9) throw new RangeError(`the zero of a pitch circle must lie across ${places.direction}`);
  const across = cross(out, zero);
  const centre = pointAt(...circle.centre, places.entry);
  return Array.from({ length: circle.count }, (_, i) => {
    const angle = ((circle.start + (360 * i) / circle.count) * Math.PI) / 180;
    const radius = circle.diameter.value / 2;
    return add(centre, add(scale(zero, radius * Math.cos(angle)), scale(across, radius * Math.sin(angle))));
  });
}

/** The circle on which the holes stand and how they lean, for their sizes to carry. */
export function patternOf(places: HolePlaces): { readonly pitchCircle?: PitchCircle; readonly lean?: NonNullable<HoleSize['lean']> } {
  const { circle, tilt } = places;
  const lean = tilt === undefined ? {} : { lean: { angle: tilt.angle, from: places.direction, toward: tilt.toward } };
  if (circle === undefined) return lean;
  return {
    ...lean,
    pitchCircle: {
      centre: pointAt(...circle.centre, places.entry),
      diameter: circle.diameter,
      start: circle.start,
      zero: vectorOf(circle.zero),
      zeroName: circle.zero,
    },
  };
}

/** Stations that the holes' places use, each once. */
export const placeStations = (places: HolePlaces): readonly string[] => [
  ...new Set([...places.at.flat(), ...(places.circle?.centre ?? [])].map((station) => station.id)),
];

/** A frame for turning a hole's outline: origin at the entry, z into the material. */
export function holeFrame(point: Vector3, direction: Vector3): ReturnType<typeof frameAlong> {
  const toward: Vector3 = Math.abs(direction[0]) > 0.9 ? [0, 1, 0] : [1, 0, 0];
  return frameAlong(point, direction, toward);
}

export function hole(room: Room, cut: HoleCut): Cut {
  const direction = wayIn(cut);
  const points = entryPoints(cut);
  const radius = cut.diameter.value / 2;
  const pointAngle = cut.pointAngle ?? (cut.finish === undefined || cut.finish === 'drilled' ? 118 : 180);
  const axis = axisOf(cut.direction);
  const lean = Math.abs(direction[indexOf(axis)]);
  const outlineAt = (point: Vector3): { corners: Vector2[]; names: string[] } => {
    // A leaning hole starts higher, so that its whole mouth is open.
    const start = -(cut.tilt === undefined ? Math.min(clear, 0.5) : clear + radius / lean);
    if (cut.depth !== undefined && pointAngle < 180) {
      const tip = cut.depth.value + radius / Math.tan((pointAngle * Math.PI) / 360);
      return {
        corners: [[0, start], [radius, start], [radius, cut.depth.value], [0, tip]],
        names: ['mouth', 'wall', 'point', 'axis'],
      };
    }
    const end =
      cut.depth?.value ??
      (cut.into === undefined
        ? reachFrom(room, point) * 2
        : ((cut.into.station.value - cut.entry.value) * senseOf(cut.direction)) / lean);
    return { corners: [[0, start], [radius, start], [radius, end], [0, end]], names: ['mouth', 'wall', 'floor', 'axis'] };
  };
  const faces: Record<string, CutFace> = {
    mouth: { stations: [] },
    wall: { stations: [], ...(cut.texture === undefined ? {} : { texture: cut.texture }) },
    point: { stations: [] },
    floor: { stations: [] },
    axis: { stations: [] },
  };
  const count = points.length > 1 ? `${points.length}x ` : '';
  const depth: Phrase =
    cut.depth !== undefined ? [inWords(cut.depth), ' deep'] : [cut.into === undefined ? 'through' : `into ${cut.into.name}`];
  return {
    id: cut.id,
    name: cut.name,
    forms: points.map((point) => {
      const { corners, names } = outlineAt(point);
      return { kind: 'revolution', frame: holeFrame(point, direction), outline: polygonOutline(corners, names) };
    }),
    faces,
    sizes: [
      {
        kind: 'hole',
        cut: cut.id,
        points,
        direction,
        ...patternOf(cut),
        diameter: cut.diameter,
        pointAngle,
        finish: cut.finish ?? 'drilled',
        ...(cut.depth === undefined ? {} : { depth: cut.depth }),
        ...(cut.into === undefined ? {} : { into: cut.into.name }),
        ...(cut.tool === undefined ? {} : { tool: cut.tool }),
      },
    ],
    stations: placeStations(cut),
    ...finishOf(cut.finishTo, cut.name, cut.depth?.value),
    instruction: [
      `${verbs[cut.finish ?? 'drilled']} ${cut.name}: ${count}`,
      inWords(cut.diameter, 'diameter'),
      ...(cut.tool === undefined ? [] : [` (${cut.tool})`]),
      ' ',
      ...depth,
      '; ',
      ...joined([...uniquePlaces(cut), finishInWords(cut.finishTo)]),
    ],
  };
}

/** "leans 30° from +Z toward -Y". */
export const leanInWords = (lean: NonNullable<HoleSize['lean']>): string =>
  `leans ${lean.angle}° from ${lean.from.toUpperCase()} toward ${lean.toward.toUpperCase()}`;

/** Each place of a group in words, once: pairs and rows speak for all their members. */
export function uniquePlaces(places: HolePlaces): readonly Phrase[] {
  const seen = new Set<string>();
  const phrases: Phrase[] = [];
  const { circle, tilt } = places;
  if (tilt !== undefined) phrases.push([leanInWords({ angle: tilt.angle, from: places.direction, toward: tilt.toward })]);
  if (circle !== undefined) {
    const [a, b] = circle.centre;
    phrases.push([
      'equally spaced on ',
      inWords(circle.diameter, 'diameter'),
      `, the first at ${circle.start}° from ${circle.zero.toUpperCase()}, about `,
      ...placeInWords(a),
      ', ',
      ...placeInWords(b),
    ]);
  }
  for (const pair of places.at)
    for (const station of pair) {
      const key =
        station.placing.kind === 'pair'
          ? [station.id, station.placing.other].sort().join('|')
          : station.placing.kind === 'row'
            ? `row ${station.placing.first}`
            : station.id;
      if (seen.has(key)) continue;
      seen.add(key);
      phrases.push([`${station.axis.toUpperCase()} `, ...placeInWords(station)]);
    }
  return phrases;
}
