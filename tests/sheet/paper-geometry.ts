import type { Curve2 } from '../../engine/geometry/curve.js';
import type { Vector2 } from '../../engine/geometry/vector.js';
import { measureText } from '../../engine/lettering/index.js';
import type { TextItem } from '../../engine/sheet/drawing.js';

/** Geometry of the paper for the checks, written apart from the engine's own so that one can find the other's faults. */
export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

export type Piece = readonly [Vector2, Vector2];

const radians = Math.PI / 180;

export const boxRound = (points: readonly Vector2[]): Box => ({
  left: Math.min(...points.map(([x]) => x)),
  right: Math.max(...points.map(([x]) => x)),
  bottom: Math.min(...points.map(([, y]) => y)),
  top: Math.max(...points.map(([, y]) => y)),
});

/** The box that the letters' own ink fills; texts stand level or read from the right. */
export function inkBox(text: TextItem): Box {
  if (text.angle !== 0 && text.angle !== 90) throw new Error(`"${text.text}" leans`);
  const { width, ascent, descent } = measureText(text.text, text.height, text.style);
  const start = { left: 0, middle: -width / 2, right: -width }[text.anchor];
  const [x, y] = text.at;
  return text.angle === 0
    ? { left: x + start, right: x + start + width, bottom: y - descent, top: y + ascent }
    : { left: x - ascent, right: x + descent, bottom: y + start, top: y + start + width };
}

export const grownBox = (box: Box, by: number): Box => ({ left: box.left - by, right: box.right + by, bottom: box.bottom - by, top: box.top + by });

/** True where two boxes share more than `slack` in both directions. */
export const boxesShare = (a: Box, b: Box, slack = 0): boolean =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > slack && Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom) > slack;

/** Points of a curve no further than `step` apart along it; the two ends alone for a line. */
export function pointsOn(curve: Curve2, step = 0.1): readonly Vector2[] {
  if (curve.kind === 'line') return [curve.from, curve.to];
  if (curve.kind === 'spline') {
    const points: Vector2[] = [curve.points[0]!];
    for (let i = 0; i + 3 < curve.points.length; i += 3) {
      const [a, b, c, d] = [curve.points[i]!, curve.points[i + 1]!, curve.points[i + 2]!, curve.points[i + 3]!];
      for (let k = 1; k <= 16; k += 1) {
        const t = k / 16;
        const s = 1 - t;
        const mix = (j: 0 | 1): number => s ** 3 * a[j] + 3 * s * s * t * b[j] + 3 * s * t * t * c[j] + t ** 3 * d[j];
        points.push([mix(0), mix(1)]);
      }
    }
    return points;
  }
  const [rx, ry, turn] = curve.kind === 'arc' ? [curve.radius, curve.radius, 0] : [curve.radiusX, curve.radiusY, curve.rotation * radians];
  const count = Math.max(8, Math.ceil((Math.max(rx, ry) * Math.abs(curve.sweep) * radians) / step));
  return Array.from({ length: count + 1 }, (_, i): Vector2 => {
    const t = (curve.start + (curve.sweep * i) / count) * radians;
    const [x, y] = [rx * Math.cos(t), ry * Math.sin(t)];
    return [curve.centre[0] + x * Math.cos(turn) - y * Math.sin(turn), curve.centre[1] + x * Math.sin(turn) + y * Math.cos(turn)];
  });
}

export function piecesOf(curve: Curve2): readonly Piece[] {
  const points = pointsOn(curve);
  return points.slice(1).map((to, i): Piece => [points[i]!, to]);
}

/** The stretch of a straight piece inside a box, mm; 0 where it stays outside. */
export function lengthInside([a, b]: Piece, box: Box): number {
  let [low, high] = [0, 1];
  for (const i of [0, 1] as const) {
    const [least, most] = i === 0 ? [box.left, box.right] : [box.bottom, box.top];
    const step = b[i] - a[i];
    if (step === 0) {
      if (a[i] <= least || a[i] >= most) return 0;
      continue;
    }
    const [p, q] = [(least - a[i]) / step, (most - a[i]) / step];
    low = Math.max(low, Math.min(p, q));
    high = Math.min(high, Math.max(p, q));
  }
  return high > low ? (high - low) * Math.hypot(b[0] - a[0], b[1] - a[1]) : 0;
}

/** Where two straight pieces cross or lie on each other, ends included; undefined where they do neither. */
export function meeting(a: Piece, b: Piece): Vector2 | undefined {
  const [u, v] = [direction(a), direction(b)];
  const [wx, wy] = [b[0][0] - a[0][0], b[0][1] - a[0][1]];
  const area = u[0] * v[1] - u[1] * v[0];
  const [lengthA, lengthB] = [Math.hypot(...u), Math.hypot(...v)];
  if (lengthA === 0 || lengthB === 0) return undefined;
  const slack = 1e-6;
  if (Math.abs(area) > 1e-9 * lengthA * lengthB) {
    const s = (wx * v[1] - wy * v[0]) / area;
    const t = (wx * u[1] - wy * u[0]) / area;
    const within = s >= -slack / lengthA && s <= 1 + slack / lengthA && t >= -slack / lengthB && t <= 1 + slack / lengthB;
    return within ? [a[0][0] + u[0] * s, a[0][1] + u[1] * s] : undefined;
  }
  if (Math.abs(wx * u[1] - wy * u[0]) / lengthA > slack) return undefined;
  const along = (p: Vector2): number => ((p[0] - a[0][0]) * u[0] + (p[1] - a[0][1]) * u[1]) / lengthA;
  const [p, q] = [along(b[0]), along(b[1])].sort((m, n) => m - n) as [number, number];
  const [low, high] = [Math.max(0, p), Math.min(lengthA, q)];
  if (high - low < -slack) return undefined;
  const middle = (low + high) / 2 / lengthA;
  return [a[0][0] + u[0] * middle, a[0][1] + u[1] * middle];
}

const direction = ([a, b]: Piece): Vector2 => [b[0] - a[0], b[1] - a[1]];

export const distance = (a: Vector2, b: Vector2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
