import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import type { ViewPlan } from '../views/plan.js';
import { drawShape } from './draw-shape.js';
import { envelopeOf } from './envelope.js';
import { unionOf } from './plane.js';
import { sayAll } from './say-on-view.js';
import type { ViewDrawing } from './view-drawing.js';

/** A view drawn at a scale with all that is said on it; paper mm about the view's own origin. */
export interface DrawnView {
  readonly plan: ViewPlan;
  readonly scale: number;
  readonly items: readonly Item[];
  /** The outline alone, and everything. */
  readonly outline: PaperBox;
  readonly envelope: PaperBox;
  /** Where the text of each item stands. */
  readonly texts: ReadonlyMap<string, PaperBox>;
  /** Items that found no place. */
  readonly failed: readonly string[];
}

/** Draws a view and places all that is said on it. */
export function drawView(drawing: ViewDrawing): DrawnView {
  const shape = drawShape(drawing);
  const said = sayAll(drawing, shape);
  const items = [...shape.items, ...said.items];
  return {
    plan: drawing.plan,
    scale: drawing.scale,
    items,
    outline: shape.outline,
    envelope: unionOf([shape.outline, envelopeOf(items)]),
    texts: said.texts,
    failed: said.failed,
  };
}

