/**
 * Roots in 0 to 1 of a polynomial given by its Bernstein coefficients, rising. The polynomial lies within the hull of its
 * coefficients: a stretch whose coefficients have one sign holds none and is passed over, another is halved.
 */
export function bernsteinRoots(coefficients: readonly number[], roots: number[] = [], low = 0, high = 1, depth = 0): number[] {
  let changes = 0;
  let last = 0;
  for (const c of coefficients) {
    const sign = Math.sign(c);
    if (sign === 0) continue;
    if (last !== 0 && sign !== last) changes += 1;
    last = sign;
  }
  const first = coefficients[0]!;
  const end = coefficients[coefficients.length - 1]!;
  if (changes === 0 && first !== 0 && end !== 0) return roots;
  if (depth >= 40) {
    keep(roots, (low + high) / 2);
    return roots;
  }
  if (changes === 1 && first * end < 0) {
    keep(roots, low + (high - low) * onlyRoot(coefficients));
    return roots;
  }
  const left: number[] = [];
  const right: number[] = [];
  const work = [...coefficients];
  for (let n = work.length; n > 0; n -= 1) {
    left.push(work[0]!);
    right.unshift(work[n - 1]!);
    for (let i = 0; i + 1 < n; i += 1) work[i] = (work[i]! + work[i + 1]!) / 2;
  }
  const middle = (low + high) / 2;
  if (changes > 0 || first === 0) bernsteinRoots(left, roots, low, middle, depth + 1);
  if (changes > 0 || end === 0) bernsteinRoots(right, roots, middle, high, depth + 1);
  return roots;
}

function keep(roots: number[], t: number): void {
  if (roots.length === 0 || t - roots[roots.length - 1]! > 1e-11) roots.push(t);
}

/** The one root between ends of different sign: false position that keeps halving when it lags (Illinois rule). */
function onlyRoot(coefficients: readonly number[]): number {
  let [a, b] = [0, 1];
  let [p, q] = [coefficients[0]!, coefficients[coefficients.length - 1]!];
  for (let round = 0; round < 60; round += 1) {
    const t = (a * q - b * p) / (q - p);
    const value = bernsteinAt(coefficients, t);
    if (value === 0) return t;
    if (value < 0 === q < 0) {
      [b, q] = [t, value];
      p /= 2;
    } else {
      [a, p] = [b, q];
      [b, q] = [t, value];
    }
    if (Math.abs(b - a) < 1e-14) return b;
  }
  return b;
}

function bernsteinAt(coefficients: readonly number[], t: number): number {
  const work = [...coefficients];
  for (let n = work.length - 1; n > 0; n -= 1) {
    for (let i = 0; i < n; i += 1) work[i] = work[i]! + (work[i + 1]! - work[i]!) * t;
  }
  return work[0]!;
}
