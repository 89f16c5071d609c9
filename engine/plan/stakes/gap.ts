import { add, dot, length, scale, subtract, type Vector3 } from '../../geometry/vector.js';
import type { Surface } from '../../solid/model.js';

/** A wall between two exact surfaces: how thick at its thinnest, mm, and the way from the first to the second there. */
export interface Gap {
  readonly thickness: number;
  readonly direction: Vector3;
}

/** A surface with the side on which the metal is: a cylinder is a hole or a shaft. */
export interface Sided {
  readonly surface: Surface;
  readonly hollow: boolean;
}

const parallel = (a: Vector3, b: Vector3): boolean => Math.abs(dot(a, b)) > 1 - 1e-9;
const square = (a: Vector3, b: Vector3): boolean => Math.abs(dot(a, b)) < 1e-9;

/** The wall between two surfaces where it is thinnest; undefined where they enclose none, or one that has no one thickness. */
export function gapBetween(first: Sided, second: Sided): Gap | undefined {
  const [a, b] = [first.surface, second.surface];
  if (a.kind === 'plane' && b.kind === 'plane') {
    if (dot(a.normal, b.normal) > -1 + 1e-9) return undefined;
    return positive(dot(subtract(a.point, b.point), a.normal), b.normal);
  }
  if (a.kind === 'plane' && b.kind === 'cylinder' && second.hollow) {
    if (!square(a.normal, b.axis)) return undefined;
    return positive(dot(subtract(a.point, b.origin), a.normal) - b.radius, scale(a.normal, -1));
  }
  if (a.kind === 'cylinder' && b.kind === 'plane' && first.hollow) {
    if (!square(b.normal, a.axis)) return undefined;
    return positive(dot(subtract(b.point, a.origin), b.normal) - a.radius, b.normal);
  }
  if (a.kind !== 'cylinder' || b.kind !== 'cylinder' || !parallel(a.axis, b.axis)) return undefined;
  const offset = subtract(b.origin, a.origin);
  const across = subtract(offset, scale(a.axis, dot(offset, a.axis)));
  const apart = length(across);
  const toward = apart > 1e-9 ? scale(across, 1 / apart) : undefined;
  if (first.hollow && second.hollow) return toward === undefined ? undefined : positive(apart - a.radius - b.radius, toward);
  // A hole in a round: thinnest on the side to which the hole lies off the middle.
  if (first.hollow && !second.hollow) return positive(b.radius - a.radius - apart, toward === undefined ? someAcross(a.axis) : scale(toward, -1));
  if (!first.hollow && second.hollow) return positive(a.radius - b.radius - apart, toward === undefined ? someAcross(a.axis) : scale(toward, -1));
  return undefined;
}

const positive = (thickness: number, direction: Vector3): Gap | undefined => (thickness > 1e-6 ? { thickness, direction } : undefined);

function someAcross(axis: Vector3): Vector3 {
  const other: Vector3 = Math.abs(axis[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0];
  const across = add(other, scale(axis, -dot(other, axis)));
  return scale(across, 1 / length(across));
}
