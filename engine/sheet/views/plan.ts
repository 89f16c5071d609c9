import type { Axis, Direction } from '../../part/station.js';
import type { Solid } from '../../solid/model.js';
import type { View } from '../../view/model.js';
import type { Vector2 } from '../../geometry/vector.js';
import type { Mark } from './marks.js';

/** The six ways of looking along an axis, named by where they stand round the front view. */
export type ViewPlace = 'front' | 'right' | 'left' | 'above' | 'below' | 'rear';

/** Where a section cuts. The half on the side of the eye is taken away. */
export interface SectionPlane {
  readonly axis: Axis;
  readonly value: number;
  /** Which way the eye stands: the part direction from the plane to the eye. */
  readonly eye: Direction;
  /** Set for a half section: only the half on this side of the axis is taken away. */
  readonly half?: { readonly side: Direction; readonly axis: number };
}

/** A stretch left out along the paper's right; view mm before it is left out. */
export interface ViewGap {
  readonly from: number;
  readonly to: number;
  /** How much of it stays, as the space between the break lines. */
  readonly stays: number;
}

/** One view that a print may show: the solid it shows, from where, and the coordinates that can be read off it. */
export interface ViewPlan {
  readonly id: string;
  readonly title: string;
  readonly place: ViewPlace | 'section';
  /** Part directions that point right and up on paper, and from the paper to the eye. */
  readonly right: Direction;
  readonly up: Direction;
  readonly eye: Direction;
  readonly section?: SectionPlane;
  /** Set where the middle of a long plain shaft is left out: from where to where along the paper, view mm, and what stays. */
  readonly gap?: ViewGap;
  /** Set for a detail: the disc of the parent view that it shows, model mm. */
  readonly detail?: { readonly centre: Vector2; readonly radius: number };
  readonly solid: Solid;
  readonly view: View;
  readonly marks: readonly Mark[];
}
