import { groundOf, shownLeft, shownRight, type Shown } from '../../engine/sheet/print-ground.js';
import { printHand } from '../../engine/sheet/print-hand.js';
import { loadKernel } from '../../engine/solid/kernel.js';
import type { PrintAnswer, PrintJob, PrintOrder } from './print-job.js';
import { serve } from './serve.js';

/** The second thread of a print: it works out what is to be seen of a part, and draws the print of its left hand. */
const loading = loadKernel();

let taken: { readonly job: PrintJob; readonly shown: Shown } | undefined;

serve<PrintOrder, PrintAnswer>(async (order) => {
  const kernel = await loading;
  if (order.kind === 'show') {
    const shown = shownRight(kernel, order.job.right);
    taken = { job: order.job, shown };
    return { kind: 'shown', shown };
  }
  const { job: { right, wishes }, shown } = taken!;
  const seen = shownLeft(kernel, right, shown);
  return { kind: 'left', print: printHand(groundOf(right, 'left', order.making, seen, wishes), wishes) };
});
