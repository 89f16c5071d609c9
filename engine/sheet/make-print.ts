import type { Parameters, Values } from '../part/parameters.js';
import type { Part } from '../part/part.js';
import type { PartGenerator } from '../part/generator.js';
import { compareSolidHands, HAND_SEGMENTS } from '../solid/hand.js';
import { loadKernel } from '../solid/kernel.js';
import { soundSolid } from '../solid/sound-solid.js';
import { checkWords } from './check-words.js';
import { printGrounds, type PrintGround } from './print-ground.js';
import { printHand, type MadePrint } from './print-hand.js';
import { papersFor, scalesFor, type PrintWishes } from './print-wishes.js';

export type { MadePrint };

/** What is asked of a print. What is left undefined follows from the part. */
export interface PrintRequest extends PrintWishes {
  readonly generator: PartGenerator;
  readonly values: Values<Parameters>;
  readonly hand: 'right' | 'left' | 'both';
}

/**
 * Makes the prints of a part, one a hand; a part that is not handed has but one. Throws UserError where the part cannot be
 * shown, or the sheet is too small.
 */
export async function makePrint(request: PrintRequest): Promise<readonly MadePrint[]> {
  const grounds = await groundsFor(request);
  return grounds.map((ground) => printHand(ground, request));
}

/** What the prints of a part are made from, one a hand; each may then be printed by itself. Throws UserError as makePrint does. */
export async function groundsFor(request: PrintRequest): Promise<readonly PrintGround[]> {
  papersFor(request);
  scalesFor(request);
  const kernel = await loadKernel();
  const right = request.generator.build(request.values);
  checkWords(right);
  const comparison = compareSolidHands(kernel, soundSolid(kernel, right, { segments: HAND_SEGMENTS }), right.handAxis);
  const hands: readonly Part['hand'][] = !comparison.handed ? ['right'] : request.hand === 'both' ? ['right', 'left'] : [request.hand];
  return printGrounds(kernel, right, comparison, hands, request);
}
