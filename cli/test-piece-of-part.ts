import type { PartGenerator } from '../engine/part/generator.js';
import type { MadePrint } from '../engine/sheet/make-print.js';
import { requestOf, type PrintChoices } from './print-request.js';

/** What may be asked of a test piece beside what may be asked of a print. */
export interface TestPieceChoices {
  readonly rehearse: readonly number[] | undefined;
  readonly material: string | undefined;
  readonly trials: number | undefined;
  readonly ladder: boolean;
}

/** The prints of a part's test piece, one a hand. The engine is loaded only now. */
export async function printTestPiece(generator: PartGenerator, choices: PrintChoices, piece: TestPieceChoices): Promise<readonly MadePrint[]> {
  const request = requestOf(generator, choices);
  const { makeTestPiece } = await import('../engine/sheet/make-test-piece.js');
  return makeTestPiece({ ...request, ...piece });
}
