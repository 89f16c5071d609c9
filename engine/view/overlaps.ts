import type { Vector3 } from '../geometry/vector.js';
import { straight } from './flat-curve.js';
import type { Piece } from './pieces.js';
import { coordinateAt } from './shadow.js';

/** Splines nearer than this run on one another, mm; well above what two of them may stray from one true curve. */
const NEAR = 2e-3;

/** A common stretch shorter than this is a mere crossing, mm. */
const CROSSING = 0.1;

const SAMPLES = 16;

/** A spline piece with points along it. */
interface Sampled {
  readonly piece: Piece;
  readonly points: readonly Vector3[];
  readonly box: readonly [number, number, number, number];
}

/**
 * Takes away what would be drawn twice: the stretches of a spline that another of higher rank (seen over hidden, then
 * nearer to the eye) covers. Lines and ellipses need no such care, for they share carriers.
 */
export function withoutOverlaps(pieces: readonly Piece[]): Piece[] {
  const splines = pieces.filter(({ strand: { shadow } }) => shadow.kind === 'spline' && !straight(shadow)).map(sampled);
  if (splines.length < 2) return [...pieces];
  const left = new Map<Piece, Piece[]>();
  for (const lower of splines) {
    const over = splines.filter((upper) => upper !== lower && touching(lower.box, upper.box));
    if (over.length === 0) continue;
    const kept = uncovered(lower, over);
    if (kept) left.set(lower.piece, kept);
  }
  return pieces.flatMap((piece) => left.get(piece) ?? [piece]);
}

function sampled(piece: Piece): Sampled {
  const { strand: { shadow }, t0, t1 } = piece;
  const count = Math.max(4, Math.ceil((t1 - t0) * SAMPLES));
  const points = Array.from({ length: count + 1 }, (_, i): Vector3 => {
    const t = t0 + ((t1 - t0) * i) / count;
    return [coordinateAt(shadow, t, 0), coordinateAt(shadow, t, 1), coordinateAt(shadow, t, 2)];
  });
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  return { piece, points, box: [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] };
}

const touching = (a: Sampled['box'], b: Sampled['box']): boolean =>
  a[0] <= b[2] + NEAR && b[0] <= a[2] + NEAR && a[1] <= b[3] + NEAR && b[1] <= a[3] + NEAR;

/** The parts of a piece that no other of higher rank runs over; undefined when that is all of it. */
function uncovered(lower: Sampled, others: readonly Sampled[]): Piece[] | undefined {
  const { piece, points } = lower;
  const covered = points.slice(1).map((q, i) => {
    const p = points[i]!;
    const middle: Vector3 = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2, (p[2] + q[2]) / 2];
    return others.some((upper) => covers(upper, lower, middle));
  });
  const place = (i: number): number => piece.t0 + ((piece.t1 - piece.t0) * i) / covered.length;
  const runs: { from: number; to: number; covered: boolean }[] = [];
  covered.forEach((state, i) => {
    const last = runs.at(-1);
    if (last?.covered === state) last.to = i + 1;
    else runs.push({ from: i, to: i + 1, covered: state });
  });
  const long = (from: number, to: number): boolean => {
    let size = 0;
    for (let i = from; i < to; i += 1) size += Math.hypot(points[i + 1]![0] - points[i]![0], points[i + 1]![1] - points[i]![1]);
    return size > CROSSING || to - from === covered.length;
  };
  const states = covered.map(() => false);
  for (const run of runs) if (run.covered && long(run.from, run.to)) states.fill(true, run.from, run.to);
  if (!states.includes(true)) return undefined;
  const kept: Piece[] = [];
  for (let i = 0; i < states.length; i += 1) {
    if (states[i]) continue;
    let end = i;
    while (end < states.length && !states[end]) end += 1;
    // Specks between covered stretches are where the samples straddle a joint.
    if (long(i, end)) kept.push({ ...piece, t0: place(i), t1: place(end) });
    i = end;
  }
  return kept;
}

/** True when `upper` runs by the point and outranks `lower` there. */
function covers(upper: Sampled, lower: Sampled, [x, y, depth]: Vector3): boolean {
  if (lower.piece.visible && !upper.piece.visible) return false;
  const { points } = upper;
  for (let i = 0; i + 1 < points.length; i += 1) {
    const [p, q] = [points[i]!, points[i + 1]!];
    const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
    const square = dx * dx + dy * dy;
    const s = square > 0 ? Math.max(0, Math.min(1, ((x - p[0]) * dx + (y - p[1]) * dy) / square)) : 0;
    const gap = (x - p[0] - s * dx) ** 2 + (y - p[1] - s * dy) ** 2;
    if (gap > NEAR * NEAR) continue;
    if (upper.piece.visible && !lower.piece.visible) return true;
    const before = p[2] + s * (q[2] - p[2]) - depth;
    if (before < -1e-3) return true;
    if (before < 1e-3 && upper.piece.strand.parent < lower.piece.strand.parent) return true;
  }
  return false;
}
