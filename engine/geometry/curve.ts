import type { Vector2 } from './vector.js';

/**
 * Curves of the plane as a drawing needs them. Angles are degrees, counter-clockwise from the positive x direction.
 * `sweep` is signed (positive counter-clockwise), at most 360 in size; 360 is the full curve.
 */
export type Curve2 =
  | { readonly kind: 'line'; readonly from: Vector2; readonly to: Vector2 }
  | { readonly kind: 'arc'; readonly centre: Vector2; readonly radius: number; readonly start: number; readonly sweep: number }
  | {
      readonly kind: 'ellipse';
      readonly centre: Vector2;
      readonly radiusX: number;
      readonly radiusY: number;
      /** Turn of the ellipse's own x axis. */
      readonly rotation: number;
      /** Start and sweep as the parameter t of (radiusX cos t, radiusY sin t) before the turn. */
      readonly start: number;
      readonly sweep: number;
    }
  /** Cubic Béziers end to end: 3n + 1 points, smooth at the joints. */
  | { readonly kind: 'spline'; readonly points: readonly Vector2[] };
