import type { Part } from '../part/part.js';
import { mirrorPart } from '../part/mirror.js';
import { solidOf } from '../solid/build.js';
import type { HandComparison } from '../solid/hand.js';
import type { Kernel } from '../solid/kernel.js';
import type { Solid } from '../solid/model.js';
import { reflectSolid } from '../solid/reflect.js';
import type { PageSet } from './pages/page-section.js';
import type { RecordedRehearsal } from './print-record.js';
import { prepareOperations, type PreparedOperations } from './operations/operation-sheets.js';
import { speechFor, type PrintWishes } from './print-wishes.js';
import { halfSection, outsideViews, sectionPlanes, sectionView } from './views/candidates.js';
import type { ViewPlan } from './views/plan.js';

/** All that the print of one hand is made from, as plain data: what is left to do needs no modelling library. */
export interface PrintGround {
  readonly part: Part;
  readonly comparison: HandComparison;
  readonly finished: Solid;
  /** Views and sections that the print may show. */
  readonly plans: readonly ViewPlan[];
  readonly prepared: PreparedOperations;
  /** Sheets of words and tables that go with it. */
  readonly pages?: PageSet;
  /** A piece of a fixture: made once, as drawn, and never as a pair of hands. */
  readonly asDrawn?: boolean;
  /** What the record says beside the print. */
  readonly rehearsal?: RecordedRehearsal;
}

/** The grounds of the hands of a part. The other hand's solids are mirror images, so that cuts and views of one serve for both. */
export function printGrounds(
  kernel: Kernel,
  right: Part,
  comparison: HandComparison,
  hands: readonly Part['hand'][],
  asked: PrintWishes,
): readonly PrintGround[] {
  const [blank, finished] = [solidOf(kernel, right, { through: 0 }), solidOf(kernel, right)];
  return hands.map((hand) => {
    if (hand === 'right') return printGround(kernel, right, blank, finished, comparison, asked);
    const image = (solid: Solid): Solid => reflectSolid(solid, right.handAxis);
    return printGround(kernel, mirrorPart(right), image(blank), image(finished), comparison, asked);
  });
}

function printGround(kernel: Kernel, part: Part, blank: Solid, finished: Solid, comparison: HandComparison, asked: PrintWishes): PrintGround {
  const half = halfSection(kernel, part, finished);
  const plans = [
    ...outsideViews(part, finished).map((plan) => (plan.place === 'front' && half !== undefined ? half : plan)),
    ...sectionPlanes(part).map((plane) => sectionView(kernel, part, finished, plane, `section ${plane.axis} ${plane.value.toFixed(3)}`)),
  ];
  const prepared = prepareOperations(kernel, part, finished, speechFor(asked, part).unit, asked.shop, blank);
  return { part, comparison, finished, plans, prepared };
}
