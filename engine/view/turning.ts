/** Steps in which a unit of the parameter is searched. */
const STEPS = 4;

/** Roots of a function between low and high, by steps and halving. */
export function searched(value: (t: number) => number, low: number, high: number): number[] {
  const count = Math.max(1, Math.ceil((high - low) * STEPS));
  const roots: number[] = [];
  let [t0, a] = [low, value(low)];
  for (let i = 1; i <= count; i += 1) {
    const t1 = low + ((high - low) * i) / count;
    const b = value(t1);
    if (a * b < 0 && Math.abs(a) + Math.abs(b) > 1e-7) {
      let [from, to] = [t0, t1];
      for (let round = 0; round < 50; round += 1) {
        const middle = (from + to) / 2;
        if (value(middle) * a > 0) from = middle;
        else to = middle;
      }
      roots.push((from + to) / 2);
    }
    [t0, a] = [t1, b];
  }
  return roots;
}
