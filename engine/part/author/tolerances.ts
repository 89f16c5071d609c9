import { toleranceLimits } from '../../trade/fits.js';
import type { Tolerance } from '../tolerance.js';

/** A tolerance of so many mm either way. */
export const plusMinus = (value: number): Tolerance => ({ kind: 'plus-minus', value });

/** Upper and lower deviation, mm, signed. */
export const deviations = (upper: number, lower: number): Tolerance => ({ kind: 'deviations', upper, lower });

/** A tolerance class of ISO 286 at a size in mm: "H7" for a hole, "g6" for a shaft. */
export function fit(name: string, size: number): Tolerance {
  const { upper, lower } = toleranceLimits(name, size);
  return { kind: 'fit', class: name, upper, lower };
}
