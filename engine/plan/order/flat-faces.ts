import { dot, type Vector3 } from '../../geometry/vector.js';
import { vectorOf } from '../../part/author/directions.js';
import type { Station } from '../../part/station.js';
import { directionOnMachine, type MachineFrame } from '../machine-frame.js';
import type { Corners } from './bands.js';
import { cornersOf, normalOf, type Placed } from './placed.js';

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
  const { faces, surfaces } = placed.solid;
  const looking = placed.members.flatMap((triangles, face): readonly { readonly face: number; readonly outside: number }[] => {
    const [first] = triangles;
    if (first === undefined || surfaces[faces[face]!.surface]!.kind !== 'plane') return [];
    const corners = cornersOf(placed, first);
    const outside = dot(corners[0], look) - wanted;
    return outside < -near || dot(normalOf(placed, corners), look) < 0.9999 ? [] : [{ face, outside }];
  });
  const nearest = Math.min(...looking.map(({ outside }) => outside));
  if (!Number.isFinite(nearest)) return undefined;
  const chosen = looking.filter(({ outside }) => outside < nearest + near).map(({ face }) => face);
  return { triangles: chosen.flatMap((face) => placed.members[face]!.map((triangle) => cornersOf(placed, triangle))), faces: chosen, outside: Math.max(0, Math.round(nearest / near) * near) };
}
