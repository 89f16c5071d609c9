import type { Curve2 } from '../geometry/curve.js';
import type { Vector2 } from '../geometry/vector.js';
import { bezierPart } from './bezier.js';
import { FULL } from './carriers.js';
import { conicOf } from './conic.js';
import { angleAt, coordinateAt, type Shadow } from './shadow.js';

const DEGREES = 180 / Math.PI;

/** Half axes nearer than this share of them make a circle. */
const ROUND = 1e-9;

/** The stretch of a shadow from t0 to t1 as a curve of the drawing; `flat` where an ellipse is seen edge-on. */
export function flatCurve(shadow: Shadow, t0: number, t1: number): Curve2 {
  const at = (t: number): Vector2 => [coordinateAt(shadow, t, 0), coordinateAt(shadow, t, 1)];
  if (shadow.kind === 'line') return { kind: 'line', from: at(t0), to: at(t1) };
  if (shadow.kind === 'spline') {
    return straight(shadow) ? { kind: 'line', from: at(t0), to: at(t1) } : { kind: 'spline', points: splinePart(shadow, t0, t1) };
  }
  if (shadow.kind === 'round') {
    const [from, to] = [angleAt(shadow, t0), angleAt(shadow, t1)];
    const turned = t1 > shadow.angles.length - 1 ? shadow.angles.at(-1)! - shadow.angles[0]! : 0;
    const sweep = (to + turned - from) * DEGREES;
    const whole = Math.abs(sweep) > 360 - 1e-4;
    return { kind: 'arc', centre: shadow.centre, radius: shadow.radius, start: whole ? 0 : round(from * DEGREES), sweep: whole ? 360 : sweep };
  }
  const { ax, ay, major, minor, lead, sense } = conicOf(shadow);
  if (minor < 1e-7 * major || minor < 1e-6) return { kind: 'line', from: at(t0), to: at(t1) };
  const centre: Vector2 = [shadow.centre[0], shadow.centre[1]];
  const full = Math.abs(t1 - t0) > FULL - 1e-6;
  const turned = Math.atan2(ay, ax) * DEGREES;
  const start = full ? 0 : sense * (t0 - lead) * DEGREES;
  const sweep = full ? 360 : sense * (t1 - t0) * DEGREES;
  if (major - minor < ROUND * major) return { kind: 'arc', centre, radius: major, start: full ? 0 : round(start + turned), sweep };
  return { kind: 'ellipse', centre, radiusX: major, radiusY: minor, rotation: turned, start: full ? 0 : round(start), sweep };
}

/** An angle brought into 0 to 360. */
const round = (angle: number): number => angle - 360 * Math.floor(angle / 360);

/** True when all points lie on one line. */
export function straight({ points }: Shadow & { kind: 'spline' }): boolean {
  const [x0, y0] = points[0]!;
  let far = points[0]!;
  for (const p of points) if ((p[0] - x0) ** 2 + (p[1] - y0) ** 2 > (far[0] - x0) ** 2 + (far[1] - y0) ** 2) far = p;
  const size = Math.sqrt((far[0] - x0) ** 2 + (far[1] - y0) ** 2);
  return points.every((p) => Math.abs((p[0] - x0) * (far[1] - y0) - (p[1] - y0) * (far[0] - x0)) <= 5e-6 * size);
}

/** The Béziers between t0 and t1, the first and the last cut; beyond the end of a closed chain those from its beginning. */
function splinePart({ points }: Shadow & { kind: 'spline' }, t0: number, t1: number): Vector2[] {
  const spans = (points.length - 1) / 3;
  const result: Vector2[] = [];
  for (let i = Math.max(0, Math.floor(t0)); i < t1; i += 1) {
    const [s0, s1] = [Math.max(0, t0 - i), Math.min(1, t1 - i)];
    if (s1 - s0 < 1e-9) continue;
    const k = 3 * (i % spans);
    const [a, b, c, d] = [points[k]!, points[k + 1]!, points[k + 2]!, points[k + 3]!];
    const [xs, ys] = [bezierPart(a[0], b[0], c[0], d[0], s0, s1), bezierPart(a[1], b[1], c[1], d[1], s0, s1)];
    const part = xs.map((x, j): Vector2 => [x, ys[j]!]);
    result.push(...(result.length === 0 ? part : part.slice(1)));
  }
  return result;
}
