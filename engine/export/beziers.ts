import type { Curve2 } from '../geometry/curve.js';
import type { Vector2 } from '../geometry/vector.js';
import { cubicsOf } from './measured-curve.js';

/** A run of Béziers or a straight line, as PDF draws them: a start, then points to which it goes, with two control points or none. */
export interface PenPath {
  readonly start: Vector2;
  readonly moves: readonly (readonly [Vector2] | readonly [Vector2, Vector2, Vector2])[];
}

/** Greatest distance of a Bézier from the arc that it stands for, mm. */
const tolerance = 5e-5;
const radian = Math.PI / 180;

/**
 * Degrees of a circle that one Bézier may stand for. With handles of 4/3 tan(a/4) a quarter turn is off by 2.73e-4 of the radius, and the error
 * goes with the sixth power of the angle (a standard result on approximating circles).
 */
const reach = (radius: number): number => Math.min(90, 90 * (tolerance / (2.73e-4 * radius)) ** (1 / 6));

function ellipsePath(centre: Vector2, radii: Vector2, rotation: number, start: number, sweep: number): PenPath {
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / reach(Math.max(...radii)) - 1e-9));
  const [cosine, sine] = [Math.cos(rotation * radian), Math.sin(rotation * radian)];
  const place = (u: number, v: number): Vector2 => {
    const [x, y] = [u * radii[0], v * radii[1]];
    return [centre[0] + x * cosine - y * sine, centre[1] + x * sine + y * cosine];
  };
  const step = sweep / count;
  const handle = (4 / 3) * Math.tan((step * radian) / 4);
  const moves = Array.from({ length: count }, (_, index) => {
    const [a, b] = [(start + index * step) * radian, (start + (index + 1) * step) * radian];
    return [
      place(Math.cos(a) - handle * Math.sin(a), Math.sin(a) + handle * Math.cos(a)),
      place(Math.cos(b) + handle * Math.sin(b), Math.sin(b) - handle * Math.cos(b)),
      place(Math.cos(b), Math.sin(b)),
    ] as const;
  });
  return { start: place(Math.cos(start * radian), Math.sin(start * radian)), moves };
}

/** A curve as lines and Béziers, no further than 1e-4 mm from it. Throws RangeError for a spline that is not 3n + 1 points. */
export function penPath(curve: Curve2): PenPath {
  switch (curve.kind) {
    case 'line':
      return { start: curve.from, moves: [[curve.to]] };
    case 'arc':
      return ellipsePath(curve.centre, [curve.radius, curve.radius], 0, curve.start, curve.sweep);
    case 'ellipse':
      return ellipsePath(curve.centre, [curve.radiusX, curve.radiusY], curve.rotation, curve.start, curve.sweep);
    case 'spline': {
      const cubics = cubicsOf(curve);
      return { start: curve.points[0] ?? [0, 0], moves: cubics.map(([, b, c, d]) => [b, c, d] as const) };
    }
  }
}
