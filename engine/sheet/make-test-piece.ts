import type { Part } from '../part/part.js';
import { accountOf } from '../plan/rehearsal/account.js';
import { testPieceOf } from '../plan/rehearsal/piece.js';
import { toRehearse } from '../plan/rehearsal/to-rehearse.js';
import { statesOf } from '../plan/states/state.js';
import { compareSolidHands, HAND_SEGMENTS } from '../solid/hand.js';
import { loadKernel } from '../solid/kernel.js';
import { soundSolid } from '../solid/sound-solid.js';
import { checkWords } from './check-words.js';
import type { PrintRequest } from './make-print.js';
import { testPieceSections } from './pages/test-piece-sections.js';
import { printGrounds, type PrintGround } from './print-ground.js';
import { printHand, type MadePrint } from './print-hand.js';
import { papersFor, scalesFor, speechFor, type PrintWishes } from './print-wishes.js';
import { recordedRehearsal } from './record-rehearsal.js';

/** What is asked of the print of a test piece beside what is asked of any print. */
export interface TestPieceWishes extends PrintWishes {
  readonly hand: 'right' | 'left' | 'both';
  /** Numbers of the operations to rehearse; those that the stakes call for if not given. */
  readonly rehearse?: readonly number[] | undefined;
  readonly material?: string | undefined;
  /** Trials on one bar, 1 if not given. */
  readonly trials?: number | undefined;
}

export type TestPieceRequest = TestPieceWishes & Pick<PrintRequest, 'generator' | 'values'>;

/** Makes the prints of the test piece of a generator's part, one a hand. Throws UserError as makePartTestPiece does. */
export const makeTestPiece = (request: TestPieceRequest): Promise<readonly MadePrint[]> => makePartTestPiece(request.generator.build(request.values), request);

/**
 * Makes the prints of the test piece of any part, one a hand.
 * @param right the right hand of the part.
 * @throws UserError for an operation that does not exist or cannot be rehearsed, where nothing is worth a rehearsal, and where
 * the piece cannot be shown or the sheet is too small.
 */
export async function makePartTestPiece(right: Part, asked: TestPieceWishes): Promise<readonly MadePrint[]> {
  return (await testPieceGrounds(right, asked)).map((ground) => printHand(ground, asked));
}

/** Less than this share of what tells two hands apart is no feature of the hand. */
const leastShare = 0.01;

/** What the prints of a test piece are made from, one a hand; each may then be printed by itself. */
export async function testPieceGrounds(right: Part, asked: TestPieceWishes): Promise<readonly PrintGround[]> {
  papersFor(asked);
  scalesFor(asked);
  const kernel = await loadKernel();
  checkWords(right);
  const speech = speechFor(asked, right);
  const finished = soundSolid(kernel, right, { segments: HAND_SEGMENTS });
  const { makers } = compareSolidHands(kernel, finished, right.handAxis);
  const states = statesOf(kernel, right);
  const { stakes, numbers } = toRehearse(right, states, { unit: speech.unit, shop: asked.shop, makers, asked: asked.rehearse });
  const piece = testPieceOf(
    kernel,
    right,
    { rehearse: numbers, ...(asked.material === undefined ? {} : { material: asked.material }), ...(asked.trials === undefined ? {} : { trials: asked.trials }) },
    asked.shop,
    states,
  );
  const account = accountOf(kernel, piece, stakes, asked.shop);
  const rehearsal = recordedRehearsal(piece, account, speech);
  const compared = compareSolidHands(kernel, soundSolid(kernel, piece.part, { segments: HAND_SEGMENTS }), piece.part.handAxis);
  // Metal that only the blank has on one side makes no hand: the cuts are what is rehearsed.
  const cutMakers = compared.makers.filter(({ cut, volume }) => cut !== 'stock' && volume > leastShare * compared.leftOver);
  const comparison = cutMakers.length === 0 ? { ...compared, handed: false, makers: [] } : compared;
  const pages = { documentType: 'test piece', sections: testPieceSections(piece, account, comparison.handed) } as const;
  const hands: readonly Part['hand'][] = !comparison.handed ? ['right'] : asked.hand === 'both' ? ['right', 'left'] : [asked.hand];
  return printGrounds(kernel, piece.part, comparison, hands, asked).map((ground) => ({ ...ground, pages, rehearsal }));
}
