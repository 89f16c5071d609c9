import type { LengthUnit } from './length.js';
import { roundedText, roundTo } from './rounding.js';

const millimetresPerInch = 25.4;

/** Three decimals of an inch, or two of a millimetre, unless one more would show something. */
function usualDecimals(value: number, unit: LengthUnit): number {
  const few = unit === 'in' ? 3 : 2;
  return roundTo(value, few) === roundTo(value, few + 1) ? few : few + 1;
}

/**
 * A length for a print, without its unit: ".250" and ".0156" inch (no nought before the point, noughts kept behind it),
 * "0.5" and "3.175" millimetres (trailing noughts only where `decimals` asks for them).
 * @param mm the length in millimetres.
 * @throws RangeError for a length that is not finite.
 */
export function formatLength(mm: number, unit: LengthUnit, decimals?: number): string {
  const value = unit === 'in' ? mm / millimetresPerInch : mm;
  const text = roundedText(value, decimals ?? usualDecimals(value, unit));
  if (unit === 'in') return text.replace(/^(-?)0\./, '$1.');
  return decimals === undefined ? withoutTrailingZeros(text) : text;
}

/** A deviation from a nominal size with its sign, in the same style: "+.0005", "-0.012"; nought is "0". */
export function formatDeviation(mm: number, unit: LengthUnit, decimals?: number): string {
  const text = formatLength(mm, unit, decimals);
  if (Number(text) === 0) return '0';
  return text.startsWith('-') ? text : `+${text}`;
}

/** Degrees with at most two decimals: "15°", "47.5°". */
export const formatAngle = (degrees: number): string => `${withoutTrailingZeros(roundedText(degrees, 2))}°`;

const withoutTrailingZeros = (text: string): string => (text.includes('.') ? text.replace(/\.?0+$/, '') : text);
