import type { PartGenerator } from '../engine/part/generator.js';
import type { MadePrint } from '../engine/sheet/make-print.js';
import type { Shown } from '../engine/sheet/print-ground.js';
import { plainData } from './plain-data.js';
import { printAlone } from './print-alone.js';
import { printedHand, type Format, type PrintedHand } from './print-files.js';
import { requestOf, wishesOf, type PrintChoices } from './print-request.js';
import type { PrintAnswer, PrintOrder } from './threads/print-job.js';
import { startThread, unwatched, type SecondThread } from './threads/second-thread.js';

export { filesOf, FORMATS, recordText, type Format, type Print } from './print-files.js';
export type { PrintChoices } from './print-request.js';

type Helper = SecondThread<PrintOrder, PrintAnswer>;

/** Room for what the second thread makes and drops again, MB: more of it would save no time. */
const young = 24;

/** The prints of a part, one a hand, with files in the formats asked for; made on two threads. */
export async function printPart(generator: PartGenerator, choices: PrintChoices, formats: readonly Format[]): Promise<readonly PrintedHand[]> {
  const helper: Helper = startThread('print-worker.js', young);
  try {
    return await printWith(helper, generator, choices, formats);
  } finally {
    helper.end();
  }
}

/** The engine is loaded only now: most commands do without it. */
async function printWith(helper: Helper, generator: PartGenerator, choices: PrintChoices, formats: readonly Format[]): Promise<readonly PrintedHand[]> {
  const request = requestOf(generator, choices);
  const wishes = wishesOf(choices);
  const { partFor } = await import('../engine/sheet/make-print.js');
  const right = partFor(request);
  // What is more than data cannot go to another thread.
  if (!plainData(right)) return printAlone(request, formats);
  helper.order({ kind: 'show', job: { right, wishes } });
  const shown = unwatched(helper.next().then(shownIn));
  const [{ loadKernel }, { comparisonOf, groundOf, handsPrinted, lookAtWork, makingOf }, { printHand }] = await Promise.all([
    import('../engine/solid/kernel.js'),
    import('../engine/sheet/print-ground.js'),
    import('../engine/sheet/print-hand.js'),
  ]);
  const kernel = await loadKernel();
  const comparison = comparisonOf(kernel, right);
  const making = makingOf(kernel, right, comparison);
  const hands = handsPrinted(comparison, choices.hand);
  if (hands.includes('left')) helper.order({ kind: 'left', making });
  const left = hands.includes('left') ? unwatched(helper.next().then(leftIn)) : undefined;
  // The other thread is not done yet.
  if (hands.includes('right')) lookAtWork(right, making);
  const prints: PrintedHand[] = [];
  for (const hand of hands) {
    // What cannot be shown is the first thing to be told.
    const seen = await shown;
    prints.push(await printedHand(hand === 'left' ? await left! : printHand(groundOf(right, hand, making, seen, wishes), wishes), formats));
  }
  return prints;
}

const wrongAnswer = ({ kind }: PrintAnswer): Error => new Error(`the second thread answered "${kind}" to another order`);

const shownIn = (answer: PrintAnswer): Shown => {
  if (answer.kind !== 'shown') throw wrongAnswer(answer);
  return answer.shown;
};

const leftIn = (answer: PrintAnswer): MadePrint => {
  if (answer.kind !== 'left') throw wrongAnswer(answer);
  return answer.print;
};
