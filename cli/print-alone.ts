import type { PrintRequest } from '../engine/sheet/make-print.js';
import { printedHand, type Format, type PrintedHand } from './print-files.js';

/** The prints of a part, one hand after the other, with files in the formats asked for. */
export async function printAlone(request: PrintRequest, formats: readonly Format[]): Promise<readonly PrintedHand[]> {
  const { makePrint } = await import('../engine/sheet/make-print.js');
  const prints: PrintedHand[] = [];
  for (const made of await makePrint(request)) prints.push(await printedHand(made, formats));
  return prints;
}
