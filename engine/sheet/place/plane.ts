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
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  let low = 0;
  let high = 1;
  if (dx === 0) {
    if (a[0] < box.left || a[0] > box.right) return false;
  } else {
    const p = (box.left - a[0]) / dx;
    const q = (box.right - a[0]) / dx;
    low = Math.max(low, Math.min(p, q));
    high = Math.min(high, Math.max(p, q));
  }
  if (dy === 0) {
    if (a[1] < box.bottom || a[1] > box.top) return false;
  } else {
    const p = (box.bottom - a[1]) / dy;
    const q = (box.top - a[1]) / dy;
    low = Math.max(low, Math.min(p, q));
    high = Math.min(high, Math.max(p, q));
  }
  return low <= high;
}

const sideOf = (p: Vector2, q: Vector2, r: Vector2): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);

const within = (p: Vector2, q: Vector2, r: Vector2): boolean =>
  r[0] >= Math.min(p[0], q[0]) - 1e-9 && r[0] <= Math.max(p[0], q[0]) + 1e-9 && r[1] >= Math.min(p[1], q[1]) - 1e-9 && r[1] <= Math.max(p[1], q[1]) + 1e-9;

/** True when two straight pieces cross or touch, ends included. */
export function segmentsCross(a: Vector2, b: Vector2, c: Vector2, d: Vector2): boolean {
  const s1 = sideOf(a, b, c);
  const s2 = sideOf(a, b, d);
  const s3 = sideOf(c, d, a);
  const s4 = sideOf(c, d, b);
  if (((s1 > 0 && s2 < 0) || (s1 < 0 && s2 > 0)) && ((s3 > 0 && s4 < 0) || (s3 < 0 && s4 > 0))) return true;
  const zero = 1e-9;
  return (
    (Math.abs(s1) < zero && within(a, b, c)) ||
    (Math.abs(s2) < zero && within(a, b, d)) ||
    (Math.abs(s3) < zero && within(c, d, a)) ||
    (Math.abs(s4) < zero && within(c, d, b))
  );
}
