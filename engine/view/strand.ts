import type { Edge } from './edges.js';
import type { CurveRole } from './model.js';
import type { Shadow } from './shadow.js';
import type { SpaceCurve } from './space-curve.js';

/** A stretch of an edge or a silhouette over which its own faces stand the same way to the eye. */
export interface Strand {
  /** Number of the curve that it is a stretch of; pieces of one parent are joined again. */
  readonly parent: number;
  readonly curve: SpaceCurve;
  readonly shadow: Shadow;
  readonly low: number;
  readonly high: number;
  readonly role: CurveRole;
  readonly surfaces: readonly number[];
  /** The material between its own two faces hides it. */
  readonly covered: boolean;
  /** What lies behind can come into sight or go out of it here. */
  readonly outline: boolean;
  /** Undefined for a silhouette. */
  readonly edge?: Edge;
}
