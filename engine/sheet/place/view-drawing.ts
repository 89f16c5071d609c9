import type { Part } from '../../part/part.js';
import type { ViewCurve } from '../../view/model.js';
import type { Housed } from '../views/choose-views.js';
import type { Detail } from '../views/details.js';
import type { ViewPlan } from '../views/plan.js';

/** A view to be drawn: what it shows, what is said on it, at which scale. */
export interface ViewDrawing {
  readonly part: Part;
  readonly plan: ViewPlan;
  readonly housed: readonly Housed[];
  readonly scale: number;
  /** Sections whose plane is marked on this view, with their letters. */
  readonly sections: readonly (readonly [string, ViewPlan])[];
  /** Which way callouts should rather not spread: level on a narrow sheet, upright on a low one. */
  readonly keep: 'narrow' | 'low';
  /** Details that are taken from this view. */
  readonly details: readonly Detail[];
  /** Which hidden curves tell something that nothing else does. */
  readonly keepHidden: (curve: ViewCurve) => boolean;
}

