import type { Vector3 } from '../../geometry/vector.js';
import type { Solid } from '../../solid/model.js';
import type { MachineFrame } from '../machine-frame.js';

/** A solid as it sits on the machine: its vertices counted along the machine's axes, mm from its zero. */
export interface Placed {
  readonly solid: Solid;
  readonly points: readonly Vector3[];
  /** Outward normal of each triangle on the machine, of length one (0 0 0 for a triangle without area). */
  readonly normals: readonly Vector3[];
}

const kept = new WeakMap<Solid, Map<string, Placed>>();

/** The work of one state on its machine; made once for each solid and frame. */
export function place(solid: Solid, frame: MachineFrame): Placed {
  const known = kept.get(solid) ?? new Map<string, Placed>();
  kept.set(solid, known);
  const key = [frame.x, frame.y, frame.z, frame.origin].join(' ');
  const made = known.get(key) ?? placeAnew(solid, frame);
  known.set(key, made);
  return made;
}

function placeAnew(solid: Solid, { x, y, z, origin }: MachineFrame): Placed {
  const { positions, triangles } = solid;
  const points: Vector3[] = [];
  for (let i = 0; i < positions.length; i += 3) {
    const [a, b, c] = [positions[i]! - origin[0], positions[i + 1]! - origin[1], positions[i + 2]! - origin[2]];
    points.push([a * x[0] + b * x[1] + c * x[2], a * y[0] + b * y[1] + c * y[2], a * z[0] + b * z[1] + c * z[2]]);
  }
  // A frame of which one axis is reversed would turn all triangles inside out.
  const hand = x[0] * (y[1] * z[2] - y[2] * z[1]) + x[1] * (y[2] * z[0] - y[0] * z[2]) + x[2] * (y[0] * z[1] - y[1] * z[0]) < 0 ? -1 : 1;
  const normals: Vector3[] = [];
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [points[triangles[i]!]!, points[triangles[i + 1]!]!, points[triangles[i + 2]!]!];
    const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
    const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
    const [nx, ny, nz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const size = Math.hypot(nx, ny, nz);
    normals.push(size < 1e-12 ? [0, 0, 0] : [(hand * nx) / size, (hand * ny) / size, (hand * nz) / size]);
  }
  return { solid, points, normals };
}

/** The three corners of a triangle. */
export const cornersOf = ({ solid: { triangles }, points }: Placed, triangle: number): readonly [Vector3, Vector3, Vector3] => [
  points[triangles[3 * triangle]!]!,
  points[triangles[3 * triangle + 1]!]!,
  points[triangles[3 * triangle + 2]!]!,
];
