import type { Vector3 } from '../../geometry/vector.js';
import { above } from './flat-distance.js';

/** A triangle as it sits on the machine. */
export type Corners = readonly [Vector3, Vector3, Vector3];

const upsideDown = (corners: readonly Vector3[]): readonly Vector3[] => corners.map(([x, y, z]): Vector3 => [x, y, -z]);

/** Area of what of the triangles lies between two heights, mm2. */
export function areaBetween(triangles: readonly Corners[], low: number, high: number): number {
  let sum = 0;
  for (const corners of triangles) {
    const left = upsideDown(above(upsideDown(above(corners, low)), -high));
    sum += polygonArea(left);
  }
  return sum;
}

function polygonArea(corners: readonly Vector3[]): number {
  const [first] = corners;
  if (first === undefined) return 0;
  let [x, y, z] = [0, 0, 0];
  for (let i = 1; i + 1 < corners.length; i += 1) {
    const [b, c] = [corners[i]!, corners[i + 1]!];
    const [ux, uy, uz] = [b[0] - first[0], b[1] - first[1], b[2] - first[2]];
    const [vx, vy, vz] = [c[0] - first[0], c[1] - first[1], c[2] - first[2]];
    x += uy * vz - uz * vy;
    y += uz * vx - ux * vz;
    z += ux * vy - uy * vx;
  }
  return Math.hypot(x, y, z) / 2;
}

export const lowest = (triangles: readonly Corners[]): number => Math.min(...triangles.map((corners) => Math.min(corners[0][2], corners[1][2], corners[2][2])));
export const highest = (triangles: readonly Corners[]): number => Math.max(...triangles.map((corners) => Math.max(corners[0][2], corners[1][2], corners[2][2])));
