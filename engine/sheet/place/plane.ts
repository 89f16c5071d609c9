import type { Vector2 } from '../../geometry/vector.js';
import type { PaperBox } from '../frame-box.js';

/** True when two boxes share more than their edges. */
export const boxesMeet = (a: PaperBox, b: PaperBox): boolean =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;

export const grown = (box: PaperBox, by: number): PaperBox => ({
  left: box.left - by,
  bottom: box.bottom - by,
  right: box.right + by,
  top: box.top + by,
});

export const boxAround = (points: readonly Vector2[]): PaperBox => {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return { left, bottom, right, top };
};

export const unionOf = (boxes: readonly PaperBox[]): PaperBox =>
  boxAround(boxes.flatMap((box): Vector2[] => [[box.left, box.bottom], [box.right, box.top]]));

export const movedBox = (box: PaperBox, by: Vector2): PaperBox => ({
  left: box.left + by[0],
  right: box.right + by[0],
  bottom: box.bottom + by[1],
  top: box.top + by[1],
});

/** True when a straight piece meets a box (Liang and Barsky's clipping). */
export function segmentMeetsBox(a: Vector2, b: Vector2, box: PaperBox): boolean {
  let low = 0;
  let high = 1;
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  for (const [p, q] of [
    [-dx, a[0] - box.left],
    [dx, box.right - a[0]],
    [-dy, a[1] - box.bottom],
    [dy, box.top - a[1]],
  ] as const) {
    if (p === 0) {
      if (q < 0) return false;
      continue;
    }
    const t = q / p;
    if (p < 0) low = Math.max(low, t);
    else high = Math.min(high, t);
    if (low > high) return false;
  }
  return true;
}

/** True when two straight pieces cross or touch within `slack` mm, ends included. */
export function segmentsCross(a: Vector2, b: Vector2, c: Vector2, d: Vector2): boolean {
  const side = (p: Vector2, q: Vector2, r: Vector2): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  const [s1, s2, s3, s4] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (((s1 > 0 && s2 < 0) || (s1 < 0 && s2 > 0)) && ((s3 > 0 && s4 < 0) || (s3 < 0 && s4 > 0))) return true;
  const within = (p: Vector2, q: Vector2, r: Vector2): boolean =>
    r[0] >= Math.min(p[0], q[0]) - 1e-9 && r[0] <= Math.max(p[0], q[0]) + 1e-9 && r[1] >= Math.min(p[1], q[1]) - 1e-9 && r[1] <= Math.max(p[1], q[1]) + 1e-9;
  const zero = (value: number): boolean => Math.abs(value) < 1e-9;
  return (zero(s1) && within(a, b, c)) || (zero(s2) && within(a, b, d)) || (zero(s3) && within(c, d, a)) || (zero(s4) && within(c, d, b));
}
