import { FULL, type Carrier, type EllipseCarrier, type LineCarrier, type SplineCarrier } from './carriers.js';
import { bernsteinRoots } from './roots.js';
import { splinesCross } from './spline-crossings.js';

/** Takes the parameters of a crossing on the first and on the second carrier. */
export type Take = (s: number, other: number) => void;

/** The stretch of a spline that is meant: the index of one Bézier; ignored for other kinds. */
export type Span = number;

/** Where two carriers cross; angles come from 0 to 2 pi. Carriers that run along each other or only touch give nothing sure. */
export function cross(a: Carrier, spanA: Span, b: Carrier, spanB: Span, take: Take): void {
  const back: Take = (s, other) => take(other, s);
  if (a.kind === 'line') {
    if (b.kind === 'line') return linesCross(a, b, take);
    if (b.kind === 'ellipse') return lineEllipse(a, b, take);
    return lineSpline(a, b, spanB, take);
  }
  if (a.kind === 'ellipse') {
    if (b.kind === 'line') return lineEllipse(b, a, back);
    if (b.kind === 'ellipse') return ellipsesCross(a, b, take);
    return ellipseSpline(a, b, spanB, take);
  }
  if (b.kind === 'line') return lineSpline(b, a, spanA, back);
  if (b.kind === 'ellipse') return ellipseSpline(b, a, spanA, back);
  return splinesCross(a.shadow.points, spanA, b.shadow.points, spanB, take);
}

function linesCross(a: LineCarrier, b: LineCarrier, take: Take): void {
  const turn = a.dx * b.dy - a.dy * b.dx;
  if (Math.abs(turn) < 1e-9) return;
  const [x, y] = [b.x - a.x, b.y - a.y];
  take((x * b.dy - y * b.dx) / turn, (x * a.dy - y * a.dx) / turn);
}

export const wrapped = (angle: number): number => angle - FULL * Math.floor(angle / FULL);

function lineEllipse(a: LineCarrier, b: EllipseCarrier, take: Take): void {
  const [x0, y0] = inUnit(b, a.x - b.x, a.y - b.y);
  const [dx, dy] = inUnit(b, a.dx, a.dy);
  const pace = dx * dx + dy * dy;
  const half = (x0 * dx + y0 * dy) / pace;
  const gap = half * half - (x0 * x0 + y0 * y0 - 1) / pace;
  if (gap < 0) return;
  const root = Math.sqrt(gap);
  for (const s of [-half - root, -half + root]) take(s, wrapped(Math.atan2(y0 + dy * s, x0 + dx * s)));
}

/** A vector of the plane where the ellipse is the unit circle. */
function inUnit(e: EllipseCarrier, x: number, y: number): [number, number] {
  const area = e.ax * e.by - e.ay * e.bx;
  return [(x * e.by - y * e.bx) / area, (e.ax * y - e.ay * x) / area];
}

function ellipsesCross(a: EllipseCarrier, b: EllipseCarrier, take: Take): void {
  const [x, y] = inUnit(a, b.x - a.x, b.y - a.y);
  const [px, py] = inUnit(a, b.ax, b.ay);
  const [qx, qy] = inUnit(a, b.bx, b.by);
  const radius = Math.sqrt(px * px + py * py);
  if (Math.abs(qx + py) + Math.abs(qy - px) < 1e-9 * radius) return circlesCross(x, y, radius, px, py, take);
  const reach = Math.sqrt(px * px + py * py + qx * qx + qy * qy);
  const apart = Math.sqrt(x * x + y * y);
  if (apart > 1 + reach || apart + 1 < radius / 2 - reach) return;
  // Quarter by quarter the point is a quotient of polynomials of the second degree in the tangent of half the angle.
  const k = Math.tan(Math.PI / 8);
  for (let quarter = 0; quarter < 4; quarter += 1) {
    const [c, s] = QUARTERS[quarter]!;
    const [ux, uy, vx, vy] = [px * c + qx * s, py * c + qy * s, qx * c - px * s, qy * c - py * s];
    const xs = quadratic(x + ux, 2 * vx, x - ux, k);
    const ys = quadratic(y + uy, 2 * vy, y - uy, k);
    const ws = quadratic(1, 0, 1, k);
    const [xx, yy, ww] = [square(xs), square(ys), square(ws)];
    const f = xx.map((value, i) => value + yy[i]! - ww[i]!);
    for (const root of bernsteinRoots(f)) {
      const z = (2 * root - 1) * k;
      const t = (quarter * Math.PI) / 2 + 2 * Math.atan(z);
      const [ct, st] = [Math.cos(t), Math.sin(t)];
      take(wrapped(Math.atan2(y + py * ct + qy * st, x + px * ct + qx * st)), wrapped(t));
    }
  }
}

const QUARTERS: readonly (readonly [number, number])[] = [[1, 0], [0, 1], [-1, 0], [0, -1]];

/** Bernstein coefficients over -k to k of p + q z + r z z. */
const quadratic = (p: number, q: number, r: number, k: number): [number, number, number] =>
  [p - q * k + r * k * k, p - r * k * k, p + q * k + r * k * k];

const square = ([a, b, c]: readonly [number, number, number]): number[] =>
  [a * a, a * b, (a * c + 2 * b * b) / 3, b * c, c * c];

/** The unit circle and one about (x, y), whose angle 0 stands in the direction (px, py). */
function circlesCross(x: number, y: number, radius: number, px: number, py: number, take: Take): void {
  const apart2 = x * x + y * y;
  const apart = Math.sqrt(apart2);
  if (apart < 1e-9 || apart > 1 + radius || apart < Math.abs(1 - radius)) return;
  const along = (apart2 + 1 - radius * radius) / (2 * apart2);
  const aside = Math.sqrt(Math.max(0, 1 / apart2 - along * along));
  const zero = Math.atan2(py, px);
  for (const sign of [-1, 1]) {
    const [cx, cy] = [x * along - sign * y * aside, y * along + sign * x * aside];
    take(wrapped(Math.atan2(cy, cx)), wrapped(Math.atan2(cy - y, cx - x) - zero));
  }
}

function lineSpline(a: LineCarrier, b: SplineCarrier, span: Span, take: Take): void {
  const points = b.shadow.points.slice(3 * span, 3 * span + 4);
  const roots = bernsteinRoots(points.map((p) => (p[0] - a.x) * a.dy - (p[1] - a.y) * a.dx));
  const xs = points.map((p) => p[0] * a.dx + p[1] * a.dy);
  for (const root of roots) take(cubic(xs, root), span + root);
}

const cubic = (c: readonly number[], s: number): number => {
  const r = 1 - s;
  return r * r * r * c[0]! + 3 * r * r * s * c[1]! + 3 * r * s * s * c[2]! + s * s * s * c[3]!;
};

function ellipseSpline(a: EllipseCarrier, b: SplineCarrier, span: Span, take: Take): void {
  const points = b.shadow.points.slice(3 * span, 3 * span + 4).map((p) => inUnit(a, p[0] - a.x, p[1] - a.y));
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  const [xx, yy] = [squareOfCubic(xs), squareOfCubic(ys)];
  const f = xx.map((value, i) => value + yy[i]! - 1);
  for (const root of bernsteinRoots(f)) take(wrapped(Math.atan2(cubic(ys, root), cubic(xs, root))), span + root);
}

/** Bernstein coefficients, degree six, of the square of a cubic. */
function squareOfCubic([a, b, c, d]: readonly number[]): number[] {
  const [p, q, r, s] = [a!, b!, c!, d!];
  return [p * p, p * q, (2 * p * r + 3 * q * q) / 5, (p * s + 9 * q * r) / 10, (2 * q * s + 3 * r * r) / 5, r * s, s * s];
}
