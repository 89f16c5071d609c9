import type { Vector2 } from '../../geometry/vector.js';
import type { Mark } from '../views/marks.js';
import type { ViewPlan } from '../views/plan.js';

/** How an item can be drawn in one view, and how well it reads there; lower cost is better. View mm, unscaled. */
export type Home =
  | {
      readonly kind: 'linear';
      readonly cost: number;
      /** Paper direction along which the distance is measured. */
      readonly measured: 'right' | 'up';
      /** The two coordinates along that direction. */
      readonly low: number;
      readonly high: number;
      readonly lowMarks: readonly Mark[];
      readonly highMarks: readonly Mark[];
      /** The side on which alone it can stand, where there is but one. */
      readonly side?: Side;
      /** Where a leader may point instead, when the text is too long to stand along the distance. */
      readonly instead?: readonly Target[];
    }
  | { readonly kind: 'leader'; readonly cost: number; readonly targets: readonly Target[] }
  /** A radius whose centre may lie off the view: its arc, from which angle to which it is seen, degrees on paper. */
  | { readonly kind: 'far-radius'; readonly cost: number; readonly centre: Vector2; readonly radius: number; readonly from: number; readonly to: number }
  | {
      readonly kind: 'angle';
      readonly cost: number;
      readonly corner: Vector2;
      /** Directions of the two legs, degrees on paper. */
      readonly from: number;
      readonly to: number;
    };

export type Side = 'left' | 'right' | 'below' | 'above';

/** Where a leader's arrow may point: a point, or anywhere on a circle or arc at which it aims at the centre. */
export interface Target {
  readonly at: Vector2;
  readonly radius: number;
  /** Directions (degrees on paper) between which the tip may lie on the circle; absent: all round. */
  readonly arc?: readonly [number, number];
  readonly end: 'arrow' | 'dot';
}

/** One thing that the print must say once. */
export interface PrintItem {
  readonly id: string;
  /** The cut or station it speaks of. */
  readonly about: string;
  /** Other cuts that it speaks of, each with the line on which it begins to. */
  readonly also?: readonly { readonly about: string; readonly line: number }[];
  /** What stands on paper, a line each. */
  readonly lines: readonly string[];
  /** True for a texture sign before the text. */
  readonly texture?: boolean;
  /** For the record. */
  readonly record: ItemRecord;
  readonly find: (plan: ViewPlan) => Home | undefined;
}

export interface ItemRecord {
  readonly kind: string;
  readonly feature: string;
  readonly axis?: string;
  readonly nominal?: number;
  readonly lower?: number;
  readonly upper?: number;
  readonly count?: number;
  readonly reference?: boolean;
  /** Angle sizes count degrees, all others mm. */
  readonly measure: 'length' | 'angle' | 'note';
}
