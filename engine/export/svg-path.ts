import type { Curve2 } from '../geometry/curve.js';
import type { Vector2 } from '../geometry/vector.js';
import { decimal } from './decimal.js';
import { cubicsOf } from './measured-curve.js';

/** Writes a point of the paper (mm, y up) for a page whose origin is at the top left. */
export type PointWriter = (point: Vector2) => string;

/** The writer for a sheet of that height, mm. */
export const pointWriter =
  (height: number): PointWriter =>
  ([x, y]) =>
    `${decimal(x)} ${decimal(height - y)}`;

const radian = Math.PI / 180;

/** The point of an ellipse (or of a circle, with equal radii) at the parameter `t`, degrees. */
function ellipsePoint(centre: Vector2, radii: Vector2, rotation: number, t: number): Vector2 {
  const [u, v] = [radii[0] * Math.cos(t * radian), radii[1] * Math.sin(t * radian)];
  const [cosine, sine] = [Math.cos(rotation * radian), Math.sin(rotation * radian)];
  return [centre[0] + u * cosine - v * sine, centre[1] + u * sine + v * cosine];
}

/** Elliptical arcs in pieces of half a turn at most: an arc command can't tell a full turn from none. */
function arcData(centre: Vector2, radii: Vector2, rotation: number, start: number, sweep: number, point: PointWriter): string {
  const pieces = Math.max(1, Math.ceil(Math.abs(sweep) / 180 - 1e-9));
  const at = (share: number): string => point(ellipsePoint(centre, radii, rotation, start + sweep * share));
  // The page is turned over (y down), so that a counter-clockwise arc of the paper has the flag of a decreasing angle.
  const head = `A${decimal(radii[0])} ${decimal(radii[1])} ${decimal(-rotation)} 0 ${sweep > 0 ? 0 : 1} `;
  const arcs = Array.from({ length: pieces }, (_, index) => `${head}${at((index + 1) / pieces)}`);
  return `M${at(0)}${arcs.join('')}`;
}

/** The path data of one curve; circles and ellipses stay true arcs. */
export function pathData(curve: Curve2, point: PointWriter): string {
  switch (curve.kind) {
    case 'line':
      return `M${point(curve.from)}L${point(curve.to)}`;
    case 'arc':
      return arcData(curve.centre, [curve.radius, curve.radius], 0, curve.start, curve.sweep, point);
    case 'ellipse':
      return arcData(curve.centre, [curve.radiusX, curve.radiusY], curve.rotation, curve.start, curve.sweep, point);
    case 'spline': {
      const cubics = cubicsOf(curve);
      const first = cubics[0];
      if (!first) return '';
      return `M${point(first[0])}${cubics.map(([, b, c, d]) => `C${point(b)} ${point(c)} ${point(d)}`).join('')}`;
    }
  }
}
