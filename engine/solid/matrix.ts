import { cross, dot, scale, type Vector3 } from '../geometry/vector.js';

/** Three rows. */
export type Matrix3 = readonly [Vector3, Vector3, Vector3];

export const apply = (m: Matrix3, v: Vector3): Vector3 => [dot(m[0], v), dot(m[1], v), dot(m[2], v)];

export const transpose = (m: Matrix3): Matrix3 => [
  [m[0][0], m[1][0], m[2][0]],
  [m[0][1], m[1][1], m[2][1]],
  [m[0][2], m[1][2], m[2][2]],
];

export function multiply(a: Matrix3, b: Matrix3): Matrix3 {
  const columns = transpose(b);
  const row = (r: Vector3): Vector3 => [dot(r, columns[0]), dot(r, columns[1]), dot(r, columns[2])];
  return [row(a[0]), row(a[1]), row(a[2])];
}

export const determinant = (m: Matrix3): number => dot(m[0], cross(m[1], m[2]));

/** The matrix that takes each direction of one orthonormal triple to that of another. */
export const turnTo = (from: Matrix3, to: Matrix3): Matrix3 => multiply(transpose(to), from);

/** The reflection that reverses one axis of space. */
export const reflection = (axis: 'x' | 'y' | 'z'): Matrix3 => [
  [axis === 'x' ? -1 : 1, 0, 0],
  [0, axis === 'y' ? -1 : 1, 0],
  [0, 0, axis === 'z' ? -1 : 1],
];

/** The 24 maps of space that take axes to axes and turn a right hand into a left one. */
export function axisReflections(): Matrix3[] {
  const orders = [[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]] as const;
  const all: Matrix3[] = [];
  for (const order of orders) {
    for (const a of [1, -1]) {
      for (const b of [1, -1]) {
        for (const c of [1, -1]) {
          const row = (axis: number, sign: number): Vector3 =>
            scale([axis === 0 ? 1 : 0, axis === 1 ? 1 : 0, axis === 2 ? 1 : 0], sign);
          const matrix: Matrix3 = [row(order[0], a), row(order[1], b), row(order[2], c)];
          if (determinant(matrix) < 0) all.push(matrix);
        }
      }
    }
  }
  return all;
}
