import type { Axis, Station } from '../../part/station.js';
import type { Sized } from '../../part/tolerance.js';

/** A distance along an axis of the part that may be printed. */
export interface LinearDimension {
  readonly id: string;
  readonly axis: Axis;
  /** The station from which it is measured, and the one it sets. */
  readonly from: Station;
  readonly to: Station;
  readonly size: Sized;
  /** Printed in brackets, without tolerance: it follows from the others. */
  readonly reference: boolean;
  /** For a row: how many equal pitches the one dimension stands for. */
  readonly repeats?: number;
}
