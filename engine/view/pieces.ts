import type { Breaker } from './breaks.js';
import { FULL, type Carrier, type Member } from './carriers.js';
import { coordinateAt } from './shadow.js';
import type { Strand } from './strand.js';

/** A stretch of a strand that is seen, or hidden, as a whole; t rises from t0 to t1. */
export interface Piece {
  readonly strand: Strand;
  readonly fold: number;
  readonly t0: number;
  readonly t1: number;
  readonly visible: boolean;
}

export type Test = (strand: Strand, t0: number, t1: number) => boolean;

/** Breaks nearer together than this are one; in mm on a line, radians or spans else. */
const TOGETHER = 1e-6;

/**
 * Cuts a carrier where members begin and end and outlines cross it, and tests on each stretch only the member nearest to
 * the eye: what hides it hides the others, and where it is seen it covers them.
 */
export function piecesOf(carrier: Carrier, breaker: Breaker, test: Test): Piece[] {
  const { members } = carrier;
  const round = carrier.kind === 'ellipse';
  const breaks: number[] = [];
  for (const { from, to, strand } of members) {
    // A full ellipse has no ends; a spline laid on a circle still begins somewhere.
    if (round && to - from > FULL - 1e-9 && strand.shadow.kind === 'ellipse') continue;
    breaks.push(round ? wrap(from) : from, round ? wrap(to) : to);
  }
  if (members.some(({ strand }) => !strand.covered)) breaker(carrier, breaks);
  breaks.sort((a, b) => a - b);
  const stops = breaks.filter((s, i) => i === 0 || s - breaks[i - 1]! > TOGETHER);
  if (round && stops.length > 1 && stops[0]! + FULL - stops.at(-1)! < TOGETHER) stops.pop();
  if (round && stops.length === 0) stops.push(members[0]!.from);
  const first = stops[0];
  if (round && first !== undefined) stops.push(first + FULL);
  const ordered = [...members].sort((a, b) => a.from - b.from);
  const pieces: Piece[] = [];
  let active: Member[] = [];
  let next = 0;
  for (let i = 0; i + 1 < stops.length; i += 1) {
    const [s0, s1] = [stops[i]!, stops[i + 1]!];
    const middle = (s0 + s1) / 2;
    if (round) active = members.slice();
    else {
      while (next < ordered.length && ordered[next]!.from < middle) active.push(ordered[next++]!);
      active = active.filter(({ to }) => to > middle);
    }
    const found = nearest(active, middle, round);
    if (!found) continue;
    const { member, turned } = found;
    const [a, b] = [member.toParameter(s0 + turned), member.toParameter(s1 + turned)];
    const { strand, fold } = member;
    const [t0, t1] = a < b ? [a, b] : [b, a];
    pieces.push({ strand, fold, t0, t1, visible: !strand.covered && test(strand, t0, t1) });
  }
  return pieces;
}

const wrap = (angle: number): number => angle - FULL * Math.floor(angle / FULL);

/** The member nearest to the eye at s, and the whole turn to add to s on it; of equals the one that comes first. */
function nearest(members: readonly Member[], s: number, round: boolean): { member: Member; turned: number } | undefined {
  let best: { member: Member; turned: number } | undefined;
  let depth = Infinity;
  for (const member of members) {
    let turned = 0;
    if (round) while (s + turned < member.from) turned += FULL;
    if (round) while (s + turned - FULL >= member.from) turned -= FULL;
    if (s + turned < member.from || s + turned > member.to) continue;
    const at = members.length === 1 ? 0 : coordinateAt(member.strand.shadow, member.toParameter(s + turned), 2);
    if (at < depth - 1e-7) {
      depth = at;
      best = { member, turned };
    }
  }
  return best;
}
