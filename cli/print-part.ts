import type { PartGenerator } from '../engine/part/generator.js';
import { plainData } from './plain-data.js';
import { printAlone } from './print-alone.js';
import { printedHand, type Format, type PrintedHand } from './print-files.js';
import { startHelper, type Helper } from './print-helper.js';
import { requestOf, wishesOf, type PrintChoices } from './print-request.js';

export { filesOf, FORMATS, recordText, type Format, type Print } from './print-files.js';
export type { PrintChoices } from './print-request.js';

/** The prints of a part, one a hand, with files in the formats asked for; made on two threads. */
export async function printPart(generator: PartGenerator, choices: PrintChoices, formats: readonly Format[]): Promise<readonly PrintedHand[]> {
  const helper = startHelper();
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
  helper.take({ right, wishes, formats });
  const [{ loadKernel }, { comparisonOf, groundOf, handsPrinted, makingOf }, { printHand }] = await Promise.all([
    import('../engine/solid/kernel.js'),
    import('../engine/sheet/print-ground.js'),
    import('../engine/sheet/print-hand.js'),
  ]);
  const kernel = await loadKernel();
  const comparison = comparisonOf(kernel, right);
  const making = makingOf(kernel, right, comparison);
  const hands = handsPrinted(comparison, choices.hand);
  if (hands.includes('left')) helper.makeLeft(making);
  const prints: PrintedHand[] = [];
  for (const hand of hands)
    prints.push(hand === 'left' ? await helper.left : await printedHand(printHand(groundOf(right, hand, making, await helper.shown, wishes), wishes), formats));
  return prints;
}
