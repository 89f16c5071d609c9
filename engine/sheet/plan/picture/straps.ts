type Span = readonly [number, number];

/** A rectangle on the table: X to the right, Y away. */
interface Patch {
  readonly x: Span;
  readonly y: Span;
}

/** A strap over the edge of the work, and the heel that it stands on beside it. */
interface StrapPlace {
  readonly strap: Patch;
  readonly heel: Patch;
}

const meet = (a: Patch, b: Patch): boolean => a.x[0] < b.x[1] && b.x[0] < a.x[1] && a.y[0] < b.y[1] && b.y[0] < a.y[1];
const middle = ({ x, y }: Patch): readonly [number, number] => [(x[0] + x[1]) / 2, (y[0] + y[1]) / 2];

/** Two straps far from each other where they cover no cut; at the two ends where there is no such place. */
export function strapPlaces(work: Patch, over: number, busy: readonly Patch[]): readonly StrapPlace[] {
  const [w, d] = [work.x[1] - work.x[0], work.y[1] - work.y[0]];
  const lap = 0.6 * over;
  const half = 0.4 * over;
  const heel = 0.4 * over;
  const shares = [0.5, 0.12, 0.3, 0.7, 0.88];
  const ends = shares.slice(0, d > 4 * half ? undefined : 1).flatMap((share): readonly StrapPlace[] => {
    const y: Span = [work.y[0] + share * d - half, work.y[0] + share * d + half];
    return [
      { strap: { x: [work.x[0] - over, work.x[0] + lap], y }, heel: { x: [work.x[0] - over, work.x[0] - over + heel], y } },
      { strap: { x: [work.x[1] - lap, work.x[1] + over], y }, heel: { x: [work.x[1] + over - heel, work.x[1] + over], y } },
    ];
  });
  const lapAcross = Math.min(lap, d / 3);
  const sides = shares.flatMap((share): readonly StrapPlace[] => {
    const x: Span = [work.x[0] + share * w - half, work.x[0] + share * w + half];
    return [
      { strap: { x, y: [work.y[0] - over, work.y[0] + lapAcross] }, heel: { x, y: [work.y[0] - over, work.y[0] - over + heel] } },
      { strap: { x, y: [work.y[1] - lapAcross, work.y[1] + over] }, heel: { x, y: [work.y[1] + over - heel, work.y[1] + over] } },
    ];
  });
  const free = [...ends, ...sides].filter(({ strap }) => busy.every((each) => !meet(each, strap)));
  let best: readonly StrapPlace[] = ends.slice(0, 2);
  let most = 0;
  for (const [i, a] of free.entries())
    for (const b of free.slice(i + 1)) {
      const [p, q] = [middle(a.strap), middle(b.strap)];
      const far = Math.hypot(p[0] - q[0], p[1] - q[1]);
      if (far > most + 1e-6 && !meet(a.strap, b.strap)) [most, best] = [far, [a, b]];
    }
  return best;
}
