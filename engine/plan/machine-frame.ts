import { cross, dot, scale, subtract, type Vector3 } from '../geometry/vector.js';
import { axes, indexOf, vectorOf } from '../part/author/directions.js';
import type { Part, SetUp } from '../part/part.js';
import type { Axis } from '../part/station.js';
import { workingZero } from './working-zero.js';

/** The axes of a machine as one stands before it: right, up, and toward the person. Right-handed for both hands of a part. */
export interface MachineAxes {
  readonly right: Vector3;
  readonly up: Vector3;
  readonly near: Vector3;
}

/** How the part's axes lie on the machine: on a lathe the tailstock is to the right, elsewhere the cutter comes from above. */
export function machineAxes(setUp: SetUp): MachineAxes {
  const first = vectorOf(setUp.up);
  const second = vectorOf(setUp.right);
  const [right, up] = setUp.machine === 'lathe' ? [first, second] : [second, first];
  return { right, up, near: cross(right, up) };
}

/**
 * The machine's own X, Y, Z in part coordinates, and its zero. On mill, drill and bench: X to the right, Y away from you, Z
 * up. On the lathe: Z along the bed to the tailstock, X along the cross slide toward you, Y down.
 */
export interface MachineFrame {
  readonly setUp: SetUp;
  readonly x: Vector3;
  readonly y: Vector3;
  readonly z: Vector3;
  readonly origin: Vector3;
  /** Whether a station of the part says where zero is along each machine axis; an axis without one has no figure to set. */
  readonly known: Readonly<Record<Axis, boolean>>;
}

/** The frame in which the settings of a set-up are counted. */
export function machineFrame(part: Part, setUp: SetUp): MachineFrame {
  const { right, up, near } = machineAxes(setUp);
  const lathe = setUp.machine === 'lathe';
  const [x, y, z] = lathe ? [near, scale(up, -1), right] : [right, cross(up, right), up];
  const stations = workingZero(part, setUp);
  const zeroAlong = (axis: Axis): number => stations.find((station) => station.axis === axis)?.value ?? 0;
  const missing = axes.filter((axis) => stations.every((station) => station.axis !== axis));
  // A machine axis is known when nothing of it runs along a part axis that has no zero.
  const known = (direction: Vector3): boolean => missing.every((axis) => Math.abs(direction[indexOf(axis)]) < 1e-9);
  return {
    setUp,
    x,
    y,
    z,
    origin: [zeroAlong('x'), zeroAlong('y'), zeroAlong('z')],
    known: { x: lathe || known(x), y: lathe || known(y), z: known(z) },
  };
}

/** A point of the part as the machine counts it, mm from its zero. */
export function toMachine(frame: MachineFrame, point: Vector3): Vector3 {
  return directionOnMachine(frame, subtract(point, frame.origin));
}

/** A direction of the part along the machine's X, Y, Z. */
export const directionOnMachine = (frame: MachineFrame, direction: Vector3): Vector3 => [
  clean(dot(direction, frame.x)),
  clean(dot(direction, frame.y)),
  clean(dot(direction, frame.z)),
];

/** Noise of binary sums must not turn nought into a sign. */
const clean = (value: number): number => (Math.abs(value) < 1e-9 ? 0 : value);
