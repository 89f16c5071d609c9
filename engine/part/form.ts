import type { Frame } from '../geometry/frame.js';
import type { Outline } from '../geometry/outline.js';
import type { Vector3 } from '../geometry/vector.js';

/** All that lies on the side of a plane to which `normal` (length one) points. */
export interface HalfSpace {
  readonly kind: 'half-space';
  readonly point: Vector3;
  readonly normal: Vector3;
  readonly face: string;
}

/** An outline in the x, y plane of `frame`, swept along its z from `low` to `high`. */
export interface Prism {
  readonly kind: 'prism';
  readonly frame: Frame;
  readonly outline: Outline;
  readonly low: number;
  readonly high: number;
  readonly lowFace: string;
  readonly highFace: string;
}

/** A closed outline in (radius, height), radius >= 0, turned about the z axis of `frame`; height runs along z. */
export interface Revolution {
  readonly kind: 'revolution';
  readonly frame: Frame;
  readonly outline: Outline;
}

/**
 * The exact shape of what a stock fills or a cut takes away. Each face of the form carries a name; the solid keeps it.
 * A form reaches into free air where the cut is open, so that no face of it lies on a face of the stock by accident.
 */
export type Form = HalfSpace | Prism | Revolution;
