import type { Vector3 } from '../../geometry/vector.js';
import type { Axis, Direction, Station } from '../station.js';

export const axes: readonly Axis[] = ['x', 'y', 'z'];

/** The axis along which a direction runs. */
export const axisOf = (direction: Direction): Axis => direction.slice(1) as Axis;

/** +1 or -1. */
export const senseOf = (direction: Direction): 1 | -1 => (direction.startsWith('+') ? 1 : -1);

/** The other way along the same axis. */
export const opposite = (direction: Direction): Direction =>
  `${direction.startsWith('+') ? '-' : '+'}${direction.slice(1)}` as Direction;

/** The vector of length one along a direction; a vector passes through. */
export function vectorOf(direction: Direction | Vector3): Vector3 {
  if (typeof direction !== 'string') return direction;
  const sense = senseOf(direction);
  const axis = axisOf(direction);
  return [axis === 'x' ? sense : 0, axis === 'y' ? sense : 0, axis === 'z' ? sense : 0];
}

/** Index of an axis in a point: x 0, y 1, z 2. */
export const indexOf = (axis: Axis): 0 | 1 | 2 => (axis === 'x' ? 0 : axis === 'y' ? 1 : 2);

/** The other two axes, in the order that makes a right-handed frame with this one as z. */
export const acrossOf = (axis: Axis): readonly [Axis, Axis] =>
  axis === 'x' ? ['y', 'z'] : axis === 'y' ? ['z', 'x'] : ['x', 'y'];

/** The point whose three coordinates are those of three stations, one an axis. Throws RangeError when an axis is missing. */
export function pointAt(...stations: readonly Station[]): Vector3 {
  const coordinate = (axis: Axis): number => {
    const station = stations.find((each) => each.axis === axis);
    if (station === undefined) throw new RangeError(`no station is given on the ${axis} axis`);
    return station.value;
  };
  return [coordinate('x'), coordinate('y'), coordinate('z')];
}
