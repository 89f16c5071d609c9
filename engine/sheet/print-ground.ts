import type { Part } from '../part/part.js';
import { mirrorPart } from '../part/mirror.js';
import { solidOf } from '../solid/build.js';
import type { HandComparison } from '../solid/hand.js';
import { handsOfPart } from '../solid/hands-of-part.js';
import type { Kernel } from '../solid/kernel.js';
import type { Solid } from '../solid/model.js';
import { reflectSolid } from '../solid/reflect.js';
import { runsOf } from '../plan/runs.js';
import { machineCamera, pictureOf } from './operations/picture.js';
import { preparedFrom, workThrough, type PreparedOperations } from './operations/prepare-operations.js';
import type { PageSet } from './pages/page-section.js';
import type { RecordedRehearsal } from './print-record.js';
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

/** What is to be seen of the finished work of one hand. */
export type Shown = Pick<PrintGround, 'finished' | 'plans'>;

/** What is known of the making of the right hand: how the other differs, and the work from its stock through each run of operations. */
export interface Making {
  readonly comparison: HandComparison;
  readonly work: readonly Solid[];
}

/** How the hands of a part differ. Throws UserError where it cannot be made. */
export const comparisonOf = (kernel: Kernel, right: Part): HandComparison =>
  handsOfPart(kernel, right, finishedWork(kernel, right));

/** The work when all is done, which the pictures need besides; undefined where some form of the part is no proper body. */
function finishedWork(kernel: Kernel, right: Part): Solid | undefined {
  try {
    return workThrough(kernel, right).at(-1);
  } catch {
    return undefined;
  }
}

/** The making of a part whose hands are compared. */
export const makingOf = (kernel: Kernel, right: Part, comparison: HandComparison): Making => ({
  comparison,
  work: workThrough(kernel, right),
});

/** Looks at the work at the end of each run, as its pictures will show it: views are kept with the solids that they are of. */
export function lookAtWork(right: Part, { work }: Making): void {
  runsOf(right).forEach(({ setUp }, i) => pictureOf(work[i + 1]!, machineCamera(setUp)));
}

/** What is to be seen of the right hand. */
export const shownRight = (kernel: Kernel, right: Part): Shown => shownOf(kernel, right, solidOf(kernel, right));

/** What is to be seen of the left hand. Its solids are mirror images, so that cuts and views of one hand serve for both. */
export const shownLeft = (kernel: Kernel, right: Part, shown: Shown): Shown =>
  shownOf(kernel, mirrorPart(right), reflectSolid(shown.finished, right.handAxis));

function shownOf(kernel: Kernel, part: Part, finished: Solid): Shown {
  const half = halfSection(kernel, part, finished);
  const plans = [
    ...outsideViews(part, finished).map((plan) => (plan.place === 'front' && half !== undefined ? half : plan)),
    ...sectionPlanes(part).map((plane) => sectionView(kernel, part, finished, plane, `section ${plane.axis} ${plane.value.toFixed(3)}`)),
  ];
  return { finished, plans };
}

/** The hands that are printed: of a part that is not handed, the right one. */
export const handsPrinted = ({ handed }: HandComparison, asked: Part['hand'] | 'both'): readonly Part['hand'][] =>
  !handed ? ['right'] : asked === 'both' ? ['right', 'left'] : [asked];

/** The ground of one hand, from what is to be seen of it and the making of the right one. */
export function groundOf(right: Part, hand: Part['hand'], { comparison, work }: Making, shown: Shown, asked: PrintWishes): PrintGround {
  const part = hand === 'right' ? right : mirrorPart(right);
  const states = hand === 'right' ? work : work.map((solid) => reflectSolid(solid, right.handAxis));
  return { part, comparison, ...shown, prepared: preparedFrom(part, states, speechFor(asked, part).unit, asked.shop) };
}

/** The grounds of the hands of a part, worked out one after the other. */
export function printGrounds(
  kernel: Kernel,
  right: Part,
  comparison: HandComparison,
  hands: readonly Part['hand'][],
  asked: PrintWishes,
): readonly PrintGround[] {
  const making = makingOf(kernel, right, comparison);
  const shown = shownRight(kernel, right);
  return hands.map((hand) => groundOf(right, hand, making, hand === 'right' ? shown : shownLeft(kernel, right, shown), asked));
}
