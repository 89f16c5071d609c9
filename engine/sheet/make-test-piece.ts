import type { Part } from '../part/part.js';
import { accountOf } from '../plan/rehearsal/account.js';
import { ladderPiece, ladderToMake } from '../plan/rehearsal/ladder-piece.js';
import { testPieceOf, type Generous } from '../plan/rehearsal/piece.js';
import { NothingWorthRehearsing, toRehearse } from '../plan/rehearsal/to-rehearse.js';
import type { Stake } from '../plan/stakes/stake.js';
import { statesOf, type OperationState } from '../plan/states/state.js';
import { compareSolidHands, HAND_SEGMENTS, type HandComparison } from '../solid/hand.js';
import { handsOfPart } from '../solid/hands-of-part.js';
import { loadKernel, type Kernel } from '../solid/kernel.js';
import type { Solid } from '../solid/model.js';
import { soundSolid } from '../solid/sound-solid.js';
import { UserError } from '../units/user-error.js';
import { checkWords } from './check-words.js';
import { distancesOf } from './dimension/distances.js';
import { shownStations } from './dimension/shown-stations.js';
import { partOf, type PrintRequest } from './make-print.js';
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
  /** The trials step through the sizes that may be tried: as many as there are. */
  readonly ladder?: boolean | undefined;
}

export type TestPieceRequest = TestPieceWishes & Pick<PrintRequest, 'generator' | 'values'>;

/** Makes the prints of the test piece of a generator's part, one a hand. Throws UserError as makePartTestPiece does. */
export const makeTestPiece = (request: TestPieceRequest): Promise<readonly MadePrint[]> => makePartTestPiece(partOf(request), request);

/** The prints of a test piece, one a hand; or why there is none. */
export interface TestPieces {
  readonly made: readonly MadePrint[];
  readonly none?: string;
}

/** As makePartTestPiece, but a part on which nothing is worth a rehearsal has none: the sentence says why. */
export async function partTestPiecesWhereWorth(right: Part, asked: TestPieceWishes): Promise<TestPieces> {
  try {
    return { made: await makePartTestPiece(right, asked) };
  } catch (error) {
    if (error instanceof NothingWorthRehearsing) return { made: [], none: error.message };
    throw error;
  }
}

/**
 * Makes the prints of the test piece of any part, one a hand.
 * @param right the right hand of the part.
 * @throws UserError for an operation that does not exist or cannot be rehearsed, where nothing is worth a rehearsal, and where
 * the piece cannot be shown or the sheet is too small.
 */
export async function makePartTestPiece(right: Part, asked: TestPieceWishes): Promise<readonly MadePrint[]> {
  return (await testPieceGrounds(right, asked)).map((ground) => printHand(ground, asked));
}

/** What the pieces of a part are derived from. */
interface Source {
  readonly kernel: Kernel;
  readonly right: Part;
  /** How the hands of the part differ. */
  readonly hands: HandComparison;
  readonly asked: TestPieceWishes;
  readonly numbers: readonly number[];
  readonly states: readonly OperationState[];
  readonly stakes: readonly Stake[];
}

/** The work after each operation, on the facets of the comparison of hands. Throws UserError where the part has no sound shape. */
function soundStates(kernel: Kernel, right: Part): readonly OperationState[] {
  try {
    return statesOf(kernel, right, { segments: HAND_SEGMENTS });
  } catch (error) {
    // This says which cut it is.
    soundSolid(kernel, right);
    throw error;
  }
}

/** What the prints of a test piece are made from, one a hand; each may then be printed by itself. */
export async function testPieceGrounds(right: Part, asked: TestPieceWishes): Promise<readonly PrintGround[]> {
  papersFor(asked);
  scalesFor(asked);
  const kernel = await loadKernel();
  checkWords(right);
  const states = soundStates(kernel, right);
  const hands = handsOfPart(kernel, right, states.at(-1)?.after);
  const { stakes, numbers } = toRehearse(right, states, { unit: speechFor(asked, right).unit, shop: asked.shop, makers: hands.makers, asked: asked.rehearse });
  const source: Source = { kernel, right, hands, asked, numbers, states, stakes };
  let first: UserError | undefined;
  // A small blank may lack what a view needs to show a cut by, or fall apart: then a larger one is taken.
  // Several trials beside each other may be more than views can show clearly.
  const ways = (asked.trials ?? 1) > 1 && asked.ladder !== true ? [undefined, 'their print on one blank would not be clear'] : [undefined];
  for (const generous of ['least', 'whole length', 'whole blank'] as const)
    for (const inTurn of ways) {
      try {
        return groundsOfPiece(source, generous, inTurn);
      } catch (error) {
        if (!(error instanceof UserError)) throw error;
        first ??= error;
      }
    }
  throw first!;
}

function groundsOfPiece({ kernel, right, hands: ofPart, asked, numbers, states, stakes }: Source, generous: Generous, inTurn: string | undefined): readonly PrintGround[] {
  const { material, shop } = asked;
  const ladder = asked.ladder === true ? ladderToMake(right, numbers, stakes, shop) : undefined;
  const trials = ladder?.rungs.length ?? asked.trials;
  const choice = { rehearse: numbers, generous, segments: HAND_SEGMENTS, ...(material === undefined ? {} : { material }), ...(trials === undefined ? {} : { trials }), ...(inTurn === undefined ? {} : { inTurn }) };
  const plain = testPieceOf(kernel, right, choice, shop, states);
  const piece = ladder === undefined ? plain : ladderPiece(plain, ladder);
  // Trials beside each other make no hand.
  const comparison = handOfPiece(kernel, piece.single, soundSolid(kernel, piece.single, { segments: HAND_SEGMENTS }), ofPart);
  const hands: readonly Part['hand'][] = !comparison.handed ? ['right'] : asked.hand === 'both' ? ['right', 'left'] : [asked.hand];
  const grounds = printGrounds(kernel, piece.part, comparison, hands, asked);
  // Throws where some coordinate can be shown in no view.
  for (const { part, finished, plans } of grounds.slice(0, 1)) distancesOf(part, shownStations(part, finished), plans);
  const account = accountOf(kernel, piece, stakes, shop);
  const rehearsal = recordedRehearsal(piece, account, speechFor(asked, right));
  return grounds.map((ground) => ({ ...ground, pages: { documentType: 'test piece', sections: testPieceSections(piece, account, comparison.handed, ground.part) } as const, rehearsal }));
}

/** Less than this share of what tells two hands apart is no feature of the hand. */
const leastShare = 0.01;

/** Metal that only the blank has on one side makes no hand: only cuts do, and only those that make the hand of the part. */
function handOfPiece(kernel: Kernel, piece: Part, solid: Solid, ofPart: HandComparison): HandComparison {
  const kept = new Set(piece.operations.flatMap(({ cuts }) => cuts.map(({ id }) => id)));
  const counts = ({ makers, leftOver }: HandComparison) => makers.filter(({ cut, volume }) => cut !== 'stock' && volume > leastShare * leftOver);
  if (counts(ofPart).every(({ cut }) => !kept.has(cut))) return { ...ofPart, handed: false, makers: [] };
  const compared = compareSolidHands(kernel, solid, piece.handAxis);
  return counts(compared).length === 0 ? { ...compared, handed: false, makers: [] } : compared;
}
