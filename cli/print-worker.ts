import { parentPort } from 'node:worker_threads';
import { groundOf, shownLeft, shownRight, type Making, type Shown } from '../engine/sheet/print-ground.js';
import { printHand } from '../engine/sheet/print-hand.js';
import { loadKernel } from '../engine/solid/kernel.js';
import { UserError } from '../engine/units/user-error.js';
import { printedHand } from './print-files.js';
import type { Answer, Order, PrintJob } from './print-job.js';

/** The second thread of a print: see print-helper. */
const port = parentPort!;
const kernel = loadKernel();
const answer = (given: Answer): void => {
  port.postMessage(given);
};

let taken: { readonly job: PrintJob; readonly shown: Promise<Shown> } | undefined;

async function show({ right }: PrintJob): Promise<Shown> {
  const shown = shownRight(await kernel, right);
  answer({ kind: 'shown', shown });
  return shown;
}

async function printLeft(making: Making): Promise<void> {
  const { job, shown } = taken!;
  const seen = shownLeft(await kernel, job.right, await shown);
  answer({ kind: 'left', print: await printedHand(printHand(groundOf(job.right, 'left', making, seen, job.wishes), job.wishes), job.formats) });
}

function tellMistake(error: unknown): void {
  if (!(error instanceof UserError)) throw error;
  answer({ kind: 'mistake', sentence: error.message });
}

port.on('message', (order: Order) => {
  if (order.kind === 'take') {
    taken = { job: order.job, shown: show(order.job) };
    taken.shown.catch(tellMistake);
  } else printLeft(order.making).catch(tellMistake);
});
