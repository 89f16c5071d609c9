import type { Parameters, Values } from '../part/parameters.js';
import type { Part } from '../part/part.js';
import type { PartGenerator } from '../part/generator.js';
import { loadKernel } from '../solid/kernel.js';
import { checkWords } from './check-words.js';
import { comparisonOf, handsPrinted, printGrounds } from './print-ground.js';
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
export const makePrint = async (request: PrintRequest): Promise<readonly MadePrint[]> => makePartPrint(partFor(request), request);

/**
 * Makes the prints of any part, one a hand.
 * @param right the right hand of the part.
 * @throws UserError as makePrint does.
 */
export async function makePartPrint(right: Part, asked: PrintWishes & Pick<PrintRequest, 'hand'>): Promise<readonly MadePrint[]> {
  papersFor(asked);
  scalesFor(asked);
  checkWords(right);
  const kernel = await loadKernel();
  const comparison = comparisonOf(kernel, right);
  return printGrounds(kernel, right, comparison, handsPrinted(comparison, asked.hand), asked).map((ground) => printHand(ground, asked));
}

const built = new WeakMap<Values<Parameters>, { readonly generator: PartGenerator; readonly part: Part }>();

/** The right hand of the part that is asked for; built once for a request, so that all that is worked out of it is worked out once. */
export function partOf({ generator, values }: Pick<PrintRequest, 'generator' | 'values'>): Part {
  const known = built.get(values);
  if (known?.generator === generator) return known.part;
  const part = generator.build(values);
  built.set(values, { generator, part });
  return part;
}

/** The part to print, its right hand. Throws UserError where it cannot be lettered, or there is no such paper or scale. */
export function partFor(request: PrintRequest): Part {
  papersFor(request);
  scalesFor(request);
  const right = partOf(request);
  checkWords(right);
  return right;
}
