/** One coordinate of a cubic Bézier at s from 0 to 1. */
export function bezierAt(a: number, b: number, c: number, d: number, s: number): number {
  const r = 1 - s;
  return r * r * r * a + 3 * r * r * s * b + 3 * r * s * s * c + s * s * s * d;
}

/** Its derivative by s. */
export function bezierSlope(a: number, b: number, c: number, d: number, s: number): number {
  const r = 1 - s;
  return 3 * (r * r * (b - a) + 2 * r * s * (c - b) + s * s * (d - c));
}

/** The stretch from s0 to s1 of a cubic Bézier, as a Bézier: one coordinate. */
export function bezierPart(a: number, b: number, c: number, d: number, s0: number, s1: number): [number, number, number, number] {
  const start = bezierAt(a, b, c, d, s0);
  const end = bezierAt(a, b, c, d, s1);
  const reach = (s1 - s0) / 3;
  return [start, start + bezierSlope(a, b, c, d, s0) * reach, end - bezierSlope(a, b, c, d, s1) * reach, end];
}
