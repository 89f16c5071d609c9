import Fraction from 'fraction.js';
import { UserError } from './user-error.js';

const digits = /^([+-]?)(?:(\d+(?:\.\d*)?|\.\d+)|(?:(\d+)[ -]+)?(\d+)\/(\d+))$/;

/**
 * An exact number as a workshop writes it: 12, 0.3125, .25, 5/16, 1 1/2, 1-1/2.
 * @param what names the number in the sentence of an error.
 * @throws UserError where the text is no such number, or a fraction's lower number is nought.
 */
export function parseFraction(text: string, what = 'number'): Fraction {
  const match = digits.exec(text.trim());
  if (match === null) {
    const hint = /^[+-]?\d+,\d+$/.test(text.trim()) ? ': write the decimals behind a point, not a comma' : ' (12, 0.25, 5/16 and 1 1/2 are understood)';
    throw new UserError(`${what} "${text.trim()}" is not a number${hint}.`);
  }
  const [, sign, decimal, whole, upper, lower] = match;
  if (lower !== undefined && Number(lower) === 0) throw new UserError(`${what} "${text.trim()}" divides by nought.`);
  const size = decimal !== undefined ? new Fraction(decimal.replace(/\.$/, '').replace(/^\./, '0.')) : new Fraction(`${upper ?? ''}/${lower ?? ''}`).add(whole ?? 0);
  return sign === '-' ? size.neg() : size;
}

/**
 * The number as the nearest binary one.
 * @throws UserError where the text is not a number.
 */
export const parseNumber = (text: string, what = 'number'): number => parseFraction(text, what).valueOf();
