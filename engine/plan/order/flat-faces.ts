import { dot, type Vector3 } from '../../geometry/vector.js';
import { vectorOf } from '../../part/author/directions.js';
import type { Station } from '../../part/station.js';
import { directionOnMachine, type MachineFrame } from '../machine-frame.js';
import type { Corners } from './bands.js';
import { cornersOf, type Placed } from './placed.js';

/** A flat face of the work on one side of it. */
export interface FlatFace {
  readonly triangles: readonly Corners[];
  /** The faces that it is made of, by their index in the solid. */
  readonly faces: readonly number[];
  /** mm by which it stands outside the station that was asked for: what is still to come off there. */
  readonly outside: number;
}

const near = 1e-3;

/** The direction on the machine in which a face at a station looks: along its axis, or against it. */
export const lookOf = (frame: MachineFrame, station: Station, sense: 1 | -1): Vector3 => directionOnMachine(frame, vectorOf(`${sense > 0 ? '+' : '-'}${station.axis}`));

/**
 * The flat face at a station, looking along its axis (`sense` 1) or against it; where there is none, the nearest one farther
 * out, from which metal is still to come off. Undefined where there is neither.
 */
export function faceAt(placed: Placed, frame: MachineFrame, station: Station, sense: 1 | -1): FlatFace | undefined {
  const look = lookOf(frame, station, sense);
  const wanted = sense * station.value - dot(frame.origin, vectorOf(`${sense > 0 ? '+' : '-'}${station.axis}`));
  const found = new Map<number, { triangles: Corners[]; faces: Set<number> }>();
  placed.normals.forEach((normal, triangle) => {
    if (dot(normal, look) < 0.9999) return;
    const corners = cornersOf(placed, triangle);
    const outside = dot(corners[0], look) - wanted;
    if (outside < -near) return;
    const level = Math.round(outside / near);
    // Facets of one plane may fall either side of a step of rounding.
    const key = [level, level - 1, level + 1].find((each) => found.has(each)) ?? level;
    const entry = found.get(key) ?? { triangles: [], faces: new Set<number>() };
    entry.triangles.push(corners);
    entry.faces.add(placed.solid.faceOfTriangle[triangle]!);
    found.set(key, entry);
  });
  const level = [...found.keys()].sort((a, b) => a - b)[0];
  const face = level === undefined ? undefined : found.get(level);
  return face === undefined ? undefined : { triangles: face.triangles, faces: [...face.faces], outside: Math.max(0, level! * near) };
}
