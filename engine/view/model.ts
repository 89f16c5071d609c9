import type { Curve2 } from '../geometry/curve.js';
import type { Vector2, Vector3 } from '../geometry/vector.js';

/** From where a view is seen. `toward` points from the eye into the scene; `up` is square to it. Both of length one. */
export interface Camera {
  readonly toward: Vector3;
  readonly up: Vector3;
}

/** What a drawn curve is: a sharp edge, the outline of a curved face, a blend between tangent faces, a thread line, the mark of a flat face. */
export type CurveRole = 'edge' | 'silhouette' | 'smooth' | 'thread' | 'flat';

/**
 * A curve that the solid does not have, but the drawing shows (a thread's second line). It is seen where `tested` is seen;
 * both run by the same parameter from 0 to 1.
 */
export interface AddedCurve {
  readonly role: CurveRole;
  readonly name: string;
  readonly drawn: Curve3;
  readonly tested: Curve3;
}

export type Curve3 =
  | { readonly kind: 'line'; readonly from: Vector3; readonly to: Vector3 }
  /** `x` and `y` span the plane, length one, at right angles; point(t) = centre + radius (x cos a + y sin a), a = start + t sweep, degrees. */
  | {
      readonly kind: 'arc';
      readonly centre: Vector3;
      readonly x: Vector3;
      readonly y: Vector3;
      readonly radius: number;
      readonly start: number;
      readonly sweep: number;
    };

/** One drawn curve of a view, in model millimetres: x to the right, y up, origin of space at (0, 0). */
export interface ViewCurve {
  readonly geometry: Curve2;
  readonly visible: boolean;
  readonly role: CurveRole;
  /** Indices into the solid's `surfaces`: the two that meet in an edge, or twice the one whose outline it is; empty for an added curve. */
  readonly surfaces: readonly number[];
  /** The name of an added curve. */
  readonly name?: string;
}

export interface View {
  readonly camera: Camera;
  readonly curves: readonly ViewCurve[];
  /** Lower left and upper right corner of all that is drawn. */
  readonly box: { readonly low: Vector2; readonly high: Vector2 };
}
