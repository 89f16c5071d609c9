import { parentPort } from 'node:worker_threads';
import { fixtureDrawing, printsOnce, type PrintOf } from '../engine/sheet/fixture/fixture-drawing.js';
import { loadKernel } from '../engine/solid/kernel.js';
import { UserError } from '../engine/units/user-error.js';
import type { FixtureAnswer, FixtureOrder } from './fixture-job.js';
import { filesOf } from './print-files.js';

/** The second thread of fixtures: see fixture-helper. */
const port = parentPort!;
const loading = loadKernel();
const answer = (given: FixtureAnswer): void => {
  port.postMessage(given);
};

let work: { readonly order: Extract<FixtureOrder, { kind: 'work' }>; readonly printOf: PrintOf } | undefined;

async function take(order: FixtureOrder): Promise<void> {
  const kernel = await loading;
  if (order.kind === 'work') {
    work = { order, printOf: printsOnce(kernel, order.part, order.wishes, order.inSet) };
    return;
  }
  const { order: { wishes, formats, inSet }, printOf } = work!;
  const made = fixtureDrawing(kernel, order.chosen, wishes, printOf, inSet);
  answer({ kind: 'printed', printed: { record: made.record, files: await filesOf([made], formats) } });
}

// One after another: what is told of a work comes before its fixtures.
let last = Promise.resolve();
port.on('message', (order: FixtureOrder) => {
  last = last.then(() => take(order)).catch((error: unknown) => {
    if (!(error instanceof UserError)) throw error;
    answer({ kind: 'mistake', sentence: error.message });
  });
});
