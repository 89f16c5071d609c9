import type { Curve2 } from '../geometry/curve.js';
import { add2, scale2, type Vector2 } from '../geometry/vector.js';

/** Changes a curve by a map that keeps shape: `point` maps points, sizes grow by `factor`, directions turn by `angle` degrees. */
function changeCurve(curve: Curve2, point: (p: Vector2) => Vector2, factor: number, angle: number): Curve2 {
  switch (curve.kind) {
    case 'line':
      return { kind: 'line', from: point(curve.from), to: point(curve.to) };
    case 'arc':
      return { ...curve, centre: point(curve.centre), radius: curve.radius * factor, start: curve.start + angle };
    case 'ellipse':
      return {
        ...curve,
        centre: point(curve.centre),
        radiusX: curve.radiusX * factor,
        radiusY: curve.radiusY * factor,
        rotation: curve.rotation + angle,
      };
    case 'spline':
      return { kind: 'spline', points: curve.points.map(point) };
  }
}

/** The vector turned counter-clockwise by `angle` degrees; exact for multiples of 90. */
export function turn2(vector: Vector2, angle: number): Vector2 {
  const [x, y] = vector;
  switch (((angle % 360) + 360) % 360) {
    case 0:
      return [x, y];
    case 90:
      return [-y, x];
    case 180:
      return [-x, -y];
    case 270:
      return [y, -x];
    default: {
      const radians = (angle * Math.PI) / 180;
      const [cosine, sine] = [Math.cos(radians), Math.sin(radians)];
      return [x * cosine - y * sine, x * sine + y * cosine];
    }
  }
}

/** The curve moved by `offset`. */
export const moveCurve = (curve: Curve2, offset: Vector2): Curve2 => changeCurve(curve, (p) => add2(p, offset), 1, 0);

/** The curve grown by `factor` (positive) about the origin. */
export const scaleCurve = (curve: Curve2, factor: number): Curve2 => changeCurve(curve, (p) => scale2(p, factor), factor, 0);

/** The curve turned counter-clockwise by `angle` degrees about the origin. */
export const turnCurve = (curve: Curve2, angle: number): Curve2 => changeCurve(curve, (p) => turn2(p, angle), 1, angle);
