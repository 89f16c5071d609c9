import type { Curve2 } from '../../engine/geometry/curve.js';
import { distance2, type Vector2 } from '../../engine/geometry/vector.js';

export type Polyline = readonly Vector2[];

/** The point of a curve of the plane at the share s, 0 to 1, of its parameter. */
export function curvePoint(curve: Curve2, s: number): Vector2 {
  switch (curve.kind) {
    case 'line':
      return [curve.from[0] + (curve.to[0] - curve.from[0]) * s, curve.from[1] + (curve.to[1] - curve.from[1]) * s];
    case 'arc': {
      const t = ((curve.start + s * curve.sweep) * Math.PI) / 180;
      return [curve.centre[0] + curve.radius * Math.cos(t), curve.centre[1] + curve.radius * Math.sin(t)];
    }
    case 'ellipse': {
      const t = ((curve.start + s * curve.sweep) * Math.PI) / 180;
      const turn = (curve.rotation * Math.PI) / 180;
      const [x, y] = [curve.radiusX * Math.cos(t), curve.radiusY * Math.sin(t)];
      return [
        curve.centre[0] + x * Math.cos(turn) - y * Math.sin(turn),
        curve.centre[1] + x * Math.sin(turn) + y * Math.cos(turn),
      ];
    }
    case 'spline': {
      const spans = (curve.points.length - 1) / 3;
      const i = Math.min(spans - 1, Math.floor(s * spans));
      const [t, r] = [s * spans - i, 1 - s * spans + i];
      const weights = [r * r * r, 3 * r * r * t, 3 * r * t * t, t * t * t];
      const at = (k: 0 | 1): number => weights.reduce((sum, weight, j) => sum + weight * (curve.points[3 * i + j]?.[k] ?? NaN), 0);
      return [at(0), at(1)];
    }
  }
}

/** A curve as a polyline with points at most about `step` apart. */
export function polylineOf(curve: Curve2, step: number): Polyline {
  const rough = Array.from({ length: 33 }, (_, i) => curvePoint(curve, i / 32));
  const size = rough.slice(1).reduce((sum, p, i) => sum + distance2(p, rough[i] ?? p), 0);
  const count = Math.max(curve.kind === 'line' ? 1 : 8, Math.ceil(size / step));
  return Array.from({ length: count + 1 }, (_, i) => curvePoint(curve, i / count));
}

export const curveLength = (curve: Curve2): number => {
  const points = polylineOf(curve, 0.01);
  return points.slice(1).reduce((sum, p, i) => sum + distance2(p, points[i] ?? p), 0);
};

/** The middles of a polyline's pieces; each stands for the piece's length. */
export const middlesOf = (line: Polyline): { readonly at: Vector2; readonly size: number }[] =>
  line.slice(1).map((p, i) => {
    const q = line[i] ?? p;
    return { at: [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2], size: distance2(p, q) };
  });

/** An index over polylines that tells whether a point lies within `tolerance` of one of them. */
export function coverOf(lines: readonly Polyline[], tolerance: number): (p: Vector2) => boolean {
  const cell = 0.5;
  const cells = new Map<string, [Vector2, Vector2][]>();
  for (const line of lines) {
    line.slice(1).forEach((b, i) => {
      const a = line[i] ?? b;
      const steps = Math.max(1, Math.ceil(distance2(a, b) / cell) * 2);
      const seen = new Set<string>();
      for (let k = 0; k <= steps; k += 1) {
        const [x, y] = [a[0] + ((b[0] - a[0]) * k) / steps, a[1] + ((b[1] - a[1]) * k) / steps];
        for (const [dx, dy] of [[0, 0], [1, 1], [1, -1], [-1, 1], [-1, -1]] as const) {
          seen.add(`${Math.floor((x + dx * cell * 0.5) / cell)} ${Math.floor((y + dy * cell * 0.5) / cell)}`);
        }
      }
      for (const key of seen) {
        const list = cells.get(key);
        if (list) list.push([a, b]);
        else cells.set(key, [[a, b]]);
      }
    });
  }
  return (p) => {
    const near = cells.get(`${Math.floor(p[0] / cell)} ${Math.floor(p[1] / cell)}`) ?? [];
    return near.some(([a, b]) => distanceToPiece(p, a, b) <= tolerance);
  };
}

function distanceToPiece(p: Vector2, a: Vector2, b: Vector2): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  const s = square > 0 ? Math.max(0, Math.min(1, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / square)) : 0;
  return distance2(p, [a[0] + dx * s, a[1] + dy * s]);
}

/** Where `lines` run outside the cover: total length and some of the places. */
export function uncovered(lines: readonly Polyline[], cover: (p: Vector2) => boolean): { readonly size: number; readonly places: Vector2[] } {
  const missed = lines.flatMap(middlesOf).filter(({ at }) => !cover(at));
  return { size: missed.reduce((sum, { size }) => sum + size, 0), places: missed.slice(0, 5).map(({ at }) => at) };
}
