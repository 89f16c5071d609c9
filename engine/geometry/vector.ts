/** A point or a vector of the plane: x, y. Millimetres where it is a point. */
export type Vector2 = readonly [number, number];

/** A point or a vector of space: x, y, z. Millimetres where it is a point. */
export type Vector3 = readonly [number, number, number];

export const add = (a: Vector3, b: Vector3): Vector3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

export const subtract = (a: Vector3, b: Vector3): Vector3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

export const scale = (a: Vector3, factor: number): Vector3 => [a[0] * factor, a[1] * factor, a[2] * factor];

export const dot = (a: Vector3, b: Vector3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export const cross = (a: Vector3, b: Vector3): Vector3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

export const length = (a: Vector3): number => Math.sqrt(dot(a, a));

/** The vector of length one along `a`. Throws RangeError for the zero vector. */
export function unit(a: Vector3): Vector3 {
  const size = length(a);
  if (size === 0) throw new RangeError('the zero vector has no direction');
  return [a[0] / size, a[1] / size, a[2] / size];
}

export const add2 = (a: Vector2, b: Vector2): Vector2 => [a[0] + b[0], a[1] + b[1]];

export const subtract2 = (a: Vector2, b: Vector2): Vector2 => [a[0] - b[0], a[1] - b[1]];

export const scale2 = (a: Vector2, factor: number): Vector2 => [a[0] * factor, a[1] * factor];

export const dot2 = (a: Vector2, b: Vector2): number => a[0] * b[0] + a[1] * b[1];

/** Twice the signed area of the triangle 0, a, b: positive when b lies to the left of a. */
export const cross2 = (a: Vector2, b: Vector2): number => a[0] * b[1] - a[1] * b[0];

export const length2 = (a: Vector2): number => Math.sqrt(dot2(a, a));

export const distance2 = (a: Vector2, b: Vector2): number => length2(subtract2(a, b));
