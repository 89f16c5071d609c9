/**
 * Limit deviations for sizes without a tolerance of their own, class m (medium): plus or minus, mm, for sizes over the first
 * figure up to the second. Source: ISO 2768-1:1989, table 1 (from memory); sizes under 0.5 mm are to be given their own.
 */
const linear: readonly (readonly [over: number, upTo: number, deviation: number])[] = [
  [0, 3, 0.1],
  [3, 6, 0.1],
  [6, 30, 0.2],
  [30, 120, 0.3],
  [120, 400, 0.5],
  [400, 1000, 0.8],
  [1000, 2000, 1.2],
];

/** Plus or minus, degrees, for angles whose shorter leg is so long, mm. Source: ISO 2768-1:1989, table 3, classes f and m (from memory). */
const angular: readonly (readonly [upTo: number, deviation: number])[] = [
  [10, 1],
  [50, 0.5],
  [120, 1 / 3],
  [400, 1 / 6],
  [Infinity, 1 / 12],
];

/** How far a length without a tolerance may be off either way, mm. */
export const generalDeviation = (length: number): number => linear.find(([, upTo]) => length <= upTo)?.[2] ?? 1.2;

/** How far an angle without a tolerance may be off either way, degrees, by the length of its shorter leg, mm. */
export const generalAngleDeviation = (leg: number): number => angular.find(([upTo]) => leg <= upTo)![1];
