import type { Part } from '../../part/part.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { Stake } from '../stakes/stake.js';
import { UserError } from '../../units/user-error.js';
import { laddersOf, type Ladder } from './ladder.js';
import type { TestPiece } from './test-piece.js';
import { withRungs } from './rungs.js';

/** A ladder of fewer rungs is none. */
const fewest = 2;

const laddersAt = (part: Part, number: number, shop: Shop | undefined): readonly Ladder[] =>
  part.operations.filter((operation) => operation.number === number).flatMap((operation) => laddersOf(part, operation, shop).filter(({ rungs }) => rungs.length >= fewest));

/**
 * The ladder of the one operation that is rehearsed.
 * @param stakes of all operations of the part: they say which may be rehearsed.
 * @throws UserError where several are, or where no size of it is tried in steps.
 */
export function ladderToMake(part: Part, rehearsed: readonly number[], stakes: readonly Stake[], shop: Shop | undefined): Ladder {
  const some = stakes.filter(({ operation, notRehearsed }) => notRehearsed === undefined && laddersAt(part, operation, shop).length > 0).map(({ operation }) => operation);
  const those = some.length === 0 ? 'no operation of it that may be rehearsed has one' : `those that have are ${some.join(', ')}`;
  const [number] = rehearsed;
  if (rehearsed.length !== 1 || number === undefined) throw new UserError(`a ladder is for one operation of the ${part.name}, and ${rehearsed.join(', ')} are rehearsed: name one with --rehearse; ${those}.`);
  const [ladder] = laddersAt(part, number, shop);
  if (ladder === undefined) throw new UserError(`operation ${number} of the ${part.name} has no size that is tried in steps; ${those}.`);
  return ladder;
}

/**
 * The piece with the rungs of a ladder at its trials.
 * @throws UserError where its trials do not stand side by side, or the cut cannot be made in steps.
 */
export function ladderPiece(piece: TestPiece, ladder: Ladder): TestPiece {
  if (piece.beside === undefined) throw new UserError(`the ladder for operation ${ladder.operation} of the ${piece.of.name} cannot stand on one blank: ${piece.whyInTurn ?? 'there is but one trial'}; ask for --trials ${ladder.rungs.length} instead.`);
  const part = withRungs(piece.part, ladder);
  if (part === undefined) throw new UserError(`the ladder for operation ${ladder.operation} of the ${piece.of.name} cannot be made: the hole that it is about is not drilled on the piece; ask for --trials ${ladder.rungs.length} instead.`);
  return { ...piece, part, nominal: piece.part, ladder };
}
