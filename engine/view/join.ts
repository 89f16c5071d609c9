import { FULL } from './carriers.js';
import type { Piece } from './pieces.js';
import type { Shadow } from './shadow.js';

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

/** Where the last piece of a closed curve ends at the beginning of the first, makes them one. */
function closeRound(result: Piece[], first: number): void {
  const [head, tail] = [result[first], result.at(-1)];
  if (!head || !tail || head === tail || !fits(head, tail)) return;
  const period = periodOf(head.strand.shadow);
  if (period === undefined || Math.abs(tail.t1 - head.t0 - period) > MEET) return;
  result.pop();
  result[first] = { ...tail, t1: head.t1 + period };
}

/** After how much of t the curve begins anew; undefined for an open one. */
function periodOf(shadow: Shadow): number | undefined {
  if (shadow.kind === 'ellipse') return FULL;
  if (shadow.kind === 'line') return undefined;
  const { points } = shadow;
  const [a, b] = [points[0]!, points.at(-1)!];
  const closed = Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]) + Math.abs(a[2] - b[2]) < 1e-6;
  return closed ? (points.length - 1) / 3 : undefined;
}
