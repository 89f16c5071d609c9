import type { Sized } from './tolerance.js';

export type Axis = 'x' | 'y' | 'z';

/** A direction along an axis of the part. */
export type Direction = '+x' | '-x' | '+y' | '-y' | '+z' | '-z';

/** How a station is found. */
export type Placing =
  /** The station is a datum: the part's zero, or a line about which things are set. */
  | { readonly kind: 'datum' }
  /** So far from another station, along the axis (`sense` 1) or against it (-1). */
  | { readonly kind: 'from'; readonly station: string; readonly distance: Sized; readonly sense: 1 | -1 }
  /** Where other sizes put it (the end of a taper): nothing to set, nothing to print. */
  | { readonly kind: 'derived'; readonly station: string; readonly by: string }
  /** One of a row at equal pitch; `index` counts from 0 at the row's first station. */
  | { readonly kind: 'row'; readonly first: string; readonly previous: string; readonly index: number; readonly count: number; readonly pitch: Sized }
  /** One of two that stand `width` apart, midway about a third. */
  | { readonly kind: 'pair'; readonly about: string; readonly other: string; readonly width: Sized };

/**
 * A coordinate that is set or measured: a face square to an axis, a hole's centre, the end of a cut.
 * `id` is unique in the part; `value` is in mm along `axis`.
 */
export interface Station {
  readonly id: string;
  readonly axis: Axis;
  readonly value: number;
  readonly name: string;
  readonly placing: Placing;
}
