/** Nodes and weights of Gauss-Legendre quadrature with five points on -1..1 (Abramowitz and Stegun, table 25.4). */
const gauss: readonly (readonly [number, number])[] = [
  [0, 0.5688888888888889],
  [-0.5384693101056831, 0.47862867049936647],
  [0.5384693101056831, 0.47862867049936647],
  [-0.906179845938664, 0.23692688505618908],
  [0.906179845938664, 0.23692688505618908],
];

const steps = 32;

/** Lengths along a curve given by its speed: mm per unit of the parameter, over low..high. */
export interface ArcLength {
  readonly length: number;
  /** The parameter at `distance` mm from the curve's start, within 1e-6 of its length; distances outside the curve give its ends. */
  readonly parameterAt: (distance: number) => number;
}

export function arcLength(speed: (parameter: number) => number, low: number, high: number): ArcLength {
  const integral = (from: number, to: number): number => {
    const [middle, half] = [(from + to) / 2, (to - from) / 2];
    return half * gauss.reduce((sum, [node, weight]) => sum + weight * speed(middle + half * node), 0);
  };
  const width = (high - low) / steps;
  const sums = [0];
  for (let step = 0; step < steps; step += 1) {
    sums.push((sums[step] ?? 0) + integral(low + step * width, low + (step + 1) * width));
  }
  const length = sums[steps] ?? 0;
  const parameterAt = (distance: number): number => {
    if (distance <= 0) return low;
    if (distance >= length) return high;
    const step = Math.min(steps, sums.findIndex((sum) => sum > distance)) - 1;
    const from = low + step * width;
    const rest = distance - (sums[step] ?? 0);
    let [near, far] = [0, width];
    while (far - near > 1e-7 * width) {
      const middle = (near + far) / 2;
      if (integral(from, from + middle) < rest) near = middle;
      else far = middle;
    }
    return from + (near + far) / 2;
  };
  return { length, parameterAt };
}
