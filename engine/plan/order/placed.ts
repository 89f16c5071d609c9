import type { Vector3 } from '../../geometry/vector.js';
import type { Solid } from '../../solid/model.js';
import type { MachineFrame } from '../machine-frame.js';
import type { Corners } from './bands.js';

/** A solid as it sits on the machine: its vertices counted along the machine's axes, mm from its zero. */
export interface Placed {
  readonly solid: Solid;
  /** x, y, z of each vertex. */
  readonly points: Float64Array;
  /** Indices of the triangles of each face. */
  readonly members: readonly (readonly number[])[];
  /** 1, or -1 where the frame turns triangles inside out. */
  readonly hand: 1 | -1;
}

const kept = new WeakMap<Solid, Map<string, Placed>>();
const parted = new WeakMap<Solid, readonly (readonly number[])[]>();

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
  const { positions } = solid;
  const points = new Float64Array(positions.length);
  for (let i = 0; i < positions.length; i += 3) {
    const [a, b, c] = [positions[i]! - origin[0], positions[i + 1]! - origin[1], positions[i + 2]! - origin[2]];
    points[i] = a * x[0] + b * x[1] + c * x[2];
    points[i + 1] = a * y[0] + b * y[1] + c * y[2];
    points[i + 2] = a * z[0] + b * z[1] + c * z[2];
  }
  const hand = x[0] * (y[1] * z[2] - y[2] * z[1]) + x[1] * (y[2] * z[0] - y[0] * z[2]) + x[2] * (y[0] * z[1] - y[1] * z[0]) < 0 ? -1 : 1;
  return { solid, points, members: trianglesOfFaces(solid), hand };
}

/** For each face of a solid the indices of its triangles. */
export function trianglesOfFaces(solid: Solid): readonly (readonly number[])[] {
  const known = parted.get(solid);
  if (known !== undefined) return known;
  const made: number[][] = solid.faces.map(() => []);
  solid.faceOfTriangle.forEach((face, triangle) => made[face]!.push(triangle));
  parted.set(solid, made);
  return made;
}

export const pointOf = ({ points }: Placed, vertex: number): Vector3 => [points[3 * vertex]!, points[3 * vertex + 1]!, points[3 * vertex + 2]!];

/** The three corners of a triangle. */
export function cornersOf(placed: Placed, triangle: number): Corners {
  const { triangles } = placed.solid;
  return [pointOf(placed, triangles[3 * triangle]!), pointOf(placed, triangles[3 * triangle + 1]!), pointOf(placed, triangles[3 * triangle + 2]!)];
}

/** The outward direction of a triangle, of length one; 0 0 0 for one without area. */
export function normalOf({ hand }: Placed, [a, b, c]: Corners): Vector3 {
  const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
  const [nx, ny, nz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const size = Math.sqrt(nx * nx + ny * ny + nz * nz);
  return size < 1e-12 ? [0, 0, 0] : [(hand * nx) / size, (hand * ny) / size, (hand * nz) / size];
}

/** The least and the greatest coordinate of all vertices along a direction of the machine. */
export function extentAlong({ points }: Placed, direction: Vector3): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (let i = 0; i < points.length; i += 3) {
    const value = points[i]! * direction[0] + points[i + 1]! * direction[1] + points[i + 2]! * direction[2];
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return [low, high];
}

export const upward: Vector3 = [0, 0, 1];

