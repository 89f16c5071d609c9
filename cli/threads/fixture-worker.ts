import { fixtureDrawing, printsOnce, type PrintOf } from '../../engine/sheet/fixture/fixture-drawing.js';
import type { FixtureRecord } from '../../engine/sheet/fixture/fixture-record.js';
import { loadKernel } from '../../engine/solid/kernel.js';
import { filesOf } from '../print-files.js';
import type { FixtureOrder, PrintedFixtures } from './fixture-job.js';
import { serve } from './serve.js';

/** The second thread of fixtures: it prints them while others are chosen. */
const loading = loadKernel();

let work: { readonly order: Extract<FixtureOrder, { kind: 'work' }>; readonly printOf: PrintOf } | undefined;

serve<FixtureOrder, PrintedFixtures<FixtureRecord>>(async (order) => {
  const kernel = await loading;
  if (order.kind === 'work') {
    work = { order, printOf: printsOnce(kernel, order.part, order.wishes, order.inSet) };
    return undefined;
  }
  const { order: { wishes, formats, inSet }, printOf } = work!;
  const made = fixtureDrawing(kernel, order.chosen, wishes, printOf, inSet);
  return { record: made.record, files: await filesOf([made], formats) };
});
