import { cross, dot, type Vector3 } from '../../geometry/vector.js';
import type { Station } from '../../part/station.js';
import type { MachineFrame } from '../machine-frame.js';
import { casterOf } from './caster.js';

import { faceAt, lookOf, type FlatFace } from './flat-faces.js';
import { jawRectangleOn, type Rectangle } from './jaw-rectangle.js';
import { place, pointOf, type Placed } from './placed.js';
import type { Solid } from '../../solid/model.js';

/** The face for one jaw. */
export interface JawFace {
  readonly station: Station;
  readonly sense: 1 | -1;
  /** Undefined where it is not there. */
  readonly face: FlatFace | undefined;
}

export const jawFaces = (solid: Solid, frame: MachineFrame, [low, high]: readonly [Station, Station]): readonly [JawFace, JawFace] => {
  const placed = place(solid, frame);
  return [
    { station: low, sense: -1, face: faceAt(placed, frame, low, -1) },
    { station: high, sense: 1, face: faceAt(placed, frame, high, 1) },
  ];
};

/** Along the jaws, on the machine. */
export const alongJaws = (frame: MachineFrame, high: Station): Vector3 => cross(lookOf(frame, high, 1), [0, 0, 1]);

/** Where both jaws can press before and after a cut; undefined where nowhere. */
export function jawRectangle(frame: MachineFrame, before: readonly JawFace[], after: readonly JawFace[]): Rectangle | undefined {
  const there = before.flatMap(({ face }) => face ?? []);
  const left = after.flatMap(({ face }, i) => (face === undefined || Math.abs(face.outside - (there[i]?.outside ?? Infinity)) > 0.01 ? [] : [face]));
  if (there.length < 2 || left.length < 2) return undefined;
  return jawRectangleOn(there.map(({ triangles }) => triangles), left.map(({ triangles }) => triangles), alongJaws(frame, before[1]!.station));
}

/** How far anything stands out beyond a face where the jaws are, mm. */
export function standsProud(placed: Placed, { face, station, sense }: JawFace, frame: MachineFrame, jaws: Rectangle): number {
  if (face === undefined) return 0;
  const [look, along] = [lookOf(frame, station, sense), alongJaws(frame, station)];
  const at = dot(face.triangles[0]![0], look);
  let most = 0;
  for (let i = 0; i < placed.points.length / 3; i += 1) {
    const point = pointOf(placed, i);
    if (point[2] < jaws.low + 0.05 || point[2] > jaws.high - 0.05 || dot(point, along) < jaws.from + 0.05 || dot(point, along) > jaws.to - 0.05) continue;
    most = Math.max(most, dot(point, look) - at);
  }
  return most;
}

/** The thinnest wall that the jaws press on over a hollow, where that is so in most of the places where they press, mm. */
export function thinWall(solid: Solid, frame: MachineFrame, [low, high]: readonly [JawFace, JawFace], jaws: Rectangle): number | undefined {
  const back = (direction: Vector3): Vector3 => [0, 1, 2].map((i) => frame.x[i]! * direction[0] + frame.y[i]! * direction[1] + frame.z[i]! * direction[2]) as unknown as Vector3;
  const caster = casterOf(solid, back(lookOf(frame, high.station, 1)));
  const [look, along] = [lookOf(frame, high.station, 1), alongJaws(frame, high.station)];
  const inner = -dot(low.face!.triangles[0]![0], lookOf(frame, low.station, -1));
  const outer = dot(high.face!.triangles[0]![0], look);
  let places = 0;
  const walls: number[] = [];
  for (const rise of [0.15, 0.4, 0.65, 0.9])
    for (const share of [0.08, 0.22, 0.36, 0.5, 0.64, 0.78, 0.92]) {
      const [s, z] = [jaws.from + share * (jaws.to - jaws.from), jaws.low + rise * (jaws.high - jaws.low)];
      const point = back([along[0] * s + look[0] * inner, along[1] * s + look[1] * inner, z]);
      const spans = caster.spans([point[0] + frame.origin[0], point[1] + frame.origin[1], point[2] + frame.origin[2]]).filter(({ from, to }) => to > -0.01 && from < outer - inner + 0.01);
      const [first, last] = [spans[0], spans.at(-1)];
      if (first === undefined || last === undefined) continue;
      places += 1;
      if (spans.length > 1) walls.push(Math.min(first.to - first.from, last.to - last.from));
    }
  return walls.length > places / 2 ? Math.min(...walls) : undefined;
}
