import { fixtureDrawing, printsOnce, type PrintOf } from '../../engine/sheet/fixture/fixture-drawing.js';
import { makePartPrint } from '../../engine/sheet/make-print.js';
import { partTestPiecesWhereWorth } from '../../engine/sheet/make-test-piece.js';
import { planHand } from '../../engine/sheet/plan/plan-hand.js';
import { loadKernel } from '../../engine/solid/kernel.js';
import type { PackAnswer, PackOrder, PackWishes } from './pack-job.js';
import { serve } from './serve.js';

/** The second thread of a pack: it makes prints and test pieces while the part is judged for its plans, draws these, and prints fixtures while others are chosen. */
const loading = loadKernel();

let work: { readonly asked: PackWishes; readonly printOf: PrintOf } | undefined;

serve<PackOrder, PackAnswer>(async (order) => {
  const kernel = await loading;
  switch (order.kind) {
    case 'prints':
      return { kind: 'prints', prints: await makePartPrint(order.right, order.asked) };
    case 'test pieces':
      return { kind: 'test pieces', pieces: await partTestPiecesWhereWorth(order.right, order.asked) };
    case 'plan':
      return { kind: 'plan', plan: planHand(order.ground, order.asked) };
    case 'work':
      work = { asked: order.asked, printOf: printsOnce(kernel, order.part, order.asked, true) };
      return undefined;
    case 'fixture':
      return { kind: 'fixture', fixture: fixtureDrawing(kernel, order.chosen, work!.asked, work!.printOf, true) };
  }
});
