import type { DrawingScale } from '../../../templates/scales.js';
import type { Part } from '../../part/part.js';
import type { ChosenViews } from '../views/choose-views.js';
import type { ViewPlan } from '../views/plan.js';
import type { Block } from './block.js';

/** Views with their sections lettered. */
export interface LetteredViews {
  readonly chosen: ChosenViews;
  readonly sections: readonly (readonly [string, ViewPlan])[];
}

/** What is laid out: the chosen views, and the blocks that go beside them. */
export interface LayOutTask {
  readonly part: Part;
  /** Sets of views that would do, best first. */
  readonly sets: readonly LetteredViews[];
  readonly angle: 'third' | 'first';
  /** Whether a view may be shown again for what it has no room for: not at all, where it is full, or callouts apart from distances. */
  readonly copies: 'none' | 'where full' | 'by kind';
  readonly scales: readonly DrawingScale[];
  /** The least scale at which the part can be read, and the greatest that it is worth standing views apart for. */
  readonly least: number;
  readonly wanted: number;
  /** Scales that a detail may have. */
  readonly detailScales: readonly DrawingScale[];
  /** Notes and the picture, which stand where room is left, in several sizes, the preferred first; given the scale. */
  readonly beside: (scale: DrawingScale) => readonly (readonly Block[])[];
}
