import type { PartGenerator } from '../engine/part/generator.js';
import { resolveValues } from '../engine/part/resolve.js';
import type { MadePrint } from '../engine/sheet/make-print.js';
import type { PrintChoices } from './print-part.js';

/** What may be asked of a test piece beside what may be asked of a print. */
export interface TestPieceChoices {
  readonly rehearse: readonly number[] | undefined;
  readonly material: string | undefined;
  readonly trials: number | undefined;
}

/** The prints of a part's test piece, one a hand. The engine is loaded only now. */
export async function printTestPiece(generator: PartGenerator, choices: PrintChoices, piece: TestPieceChoices): Promise<readonly MadePrint[]> {
  const { settings, shop, ...asked } = choices;
  const values = resolveValues(generator, settings, choices.units, shop?.drills);
  const { makeTestPiece } = await import('../engine/sheet/make-test-piece.js');
  return makeTestPiece({ generator, values, ...asked, ...piece, ...(shop === undefined ? {} : { shop }) });
}
