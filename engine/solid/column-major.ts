import type { Mat4 } from 'manifold-3d/manifold';
import type { Motion } from './transform.js';

/** A motion as the boolean library takes it: four columns of four. */
export const columnMajor = ({ matrix, shift }: Motion): Mat4 => [
  matrix[0][0], matrix[1][0], matrix[2][0], 0,
  matrix[0][1], matrix[1][1], matrix[2][1], 0,
  matrix[0][2], matrix[1][2], matrix[2][2], 0,
  shift[0], shift[1], shift[2], 1,
];
