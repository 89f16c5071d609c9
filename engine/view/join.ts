import { FULL } from './carriers.js';
import type { Piece } from './pieces.js';

/** Ends nearer than this in the parameter meet. */
const MEET = 3e-6;

/** Joins neighbouring pieces of one curve that are seen alike, round the end of a closed curve too; in the order of the curves. */
export function joined(pieces: readonly Piece[]): Piece[] {
  const sorted = [...pieces].sort((a, b) =>
    a.strand.parent - b.strand.parent || a.fold - b.fold || a.t0 - b.t0);
  const result: Piece[] = [];
  let first = 0;
  for (const piece of sorted) {
    const last = result.at(-1);
    const sameCurve = last !== undefined && last.strand.parent === piece.strand.parent && last.fold === piece.fold;
    if (!sameCurve) {
      closeRound(result, first);
      first = result.length;
    }
    if (sameCurve && fits(last, piece) && Math.abs(piece.t0 - last.t1) < MEET) {
      result[result.length - 1] = { ...last, t1: piece.t1 };
    } else result.push(piece);
  }
  closeRound(result, first);
  return result;
}

const fits = (a: Piece, b: Piece): boolean => a.visible === b.visible && a.strand.role === b.strand.role;

/** Where the last piece of an ellipse ends at the beginning of the first, makes them one. */
function closeRound(result: Piece[], first: number): void {
  const [head, tail] = [result[first], result.at(-1)];
  if (!head || !tail || head === tail || head.strand.shadow.kind !== 'ellipse' || !fits(head, tail)) return;
  if (Math.abs(tail.t1 - head.t0 - FULL) > MEET) return;
  result.pop();
  result[first] = { ...tail, t1: head.t1 + FULL };
}
