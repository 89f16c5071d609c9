import type { Vector3 } from '../geometry/vector.js';
import { bezierAt, bezierPart, bezierSlope } from './bezier.js';

type Cubic = readonly [number, number, number, number];

/** Below this deviation from its chord, mm, a Bézier is crossed as its chord; steps of Newton follow. */
const FLAT = 1e-3;

/** Where one cubic Bézier crosses another in the plane; both given as one span of a chain. */
export function splinesCross(a: readonly Vector3[], spanA: number, b: readonly Vector3[], spanB: number, take: (s: number, other: number) => void): void {
  const part = (points: readonly Vector3[], span: number, k: 0 | 1): Cubic =>
    [0, 1, 2, 3].map((i) => points[3 * span + i]![k]) as unknown as Cubic;
  const [ax, ay, bx, by] = [part(a, spanA, 0), part(a, spanA, 1), part(b, spanB, 0), part(b, spanB, 1)];
  const found: [number, number][] = [];
  const search = (a0: number, a1: number, b0: number, b1: number, depth: number): void => {
    const [px, py, qx, qy] = [cut(ax, a0, a1), cut(ay, a0, a1), cut(bx, b0, b1), cut(by, b0, b1)];
    if (apart(px, qx) || apart(py, qy)) return;
    const [bentA, bentB] = [bend(px, py), bend(qx, qy)];
    if (depth > 24 || (bentA < FLAT && bentB < FLAT)) {
      const hit = refined(ax, ay, bx, by, (a0 + a1) / 2, (b0 + b1) / 2, a1 - a0, b1 - b0);
      if (hit && !found.some(([s, t]) => Math.abs(s - hit[0]) < 1e-7 && Math.abs(t - hit[1]) < 1e-7)) found.push(hit);
      return;
    }
    if (bentA >= bentB) {
      const middle = (a0 + a1) / 2;
      search(a0, middle, b0, b1, depth + 1);
      search(middle, a1, b0, b1, depth + 1);
    } else {
      const middle = (b0 + b1) / 2;
      search(a0, a1, b0, middle, depth + 1);
      search(a0, a1, middle, b1, depth + 1);
    }
  };
  search(0, 1, 0, 1, 0);
  for (const [s, t] of found) take(spanA + s, spanB + t);
}

const cut = ([a, b, c, d]: Cubic, s0: number, s1: number): Cubic => bezierPart(a, b, c, d, s0, s1);

const apart = (p: Cubic, q: Cubic): boolean => Math.max(...p) < Math.min(...q) || Math.max(...q) < Math.min(...p);

/** How far the inner points stray from thirds of the chord: no less than 3/4 of the curve's own deviation. */
function bend(x: Cubic, y: Cubic): number {
  const stray = (c: Cubic): number =>
    Math.max(Math.abs(c[1] - (2 * c[0] + c[3]) / 3), Math.abs(c[2] - (c[0] + 2 * c[3]) / 3));
  return Math.max(stray(x), stray(y));
}

/** Newton for both parameters; undefined where the curves do not cross within the stretch (half as much again about it). */
function refined(ax: Cubic, ay: Cubic, bx: Cubic, by: Cubic, s0: number, t0: number, widthS: number, widthT: number): [number, number] | undefined {
  let [s, t] = [s0, t0];
  for (let round = 0; round < 12; round += 1) {
    const [x, y] = [bezierAt(...bx, t) - bezierAt(...ax, s), bezierAt(...by, t) - bezierAt(...ay, s)];
    const [px, py, qx, qy] = [bezierSlope(...ax, s), bezierSlope(...ay, s), bezierSlope(...bx, t), bezierSlope(...by, t)];
    const turn = px * qy - py * qx;
    if (Math.abs(turn) < 1e-12) return undefined;
    const [ds, dt] = [(x * qy - y * qx) / turn, (x * py - y * px) / turn];
    s += ds;
    t += dt;
    if (Math.abs(ds) + Math.abs(dt) < 1e-13) break;
  }
  const miss = (bezierAt(...bx, t) - bezierAt(...ax, s)) ** 2 + (bezierAt(...by, t) - bezierAt(...ay, s)) ** 2;
  const inside = Math.abs(s - s0) <= 0.75 * widthS && Math.abs(t - t0) <= 0.75 * widthT;
  return inside && miss < 1e-14 && s > -1e-9 && s < 1 + 1e-9 && t > -1e-9 && t < 1 + 1e-9 ? [s, t] : undefined;
}
