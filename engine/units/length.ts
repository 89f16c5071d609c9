import Fraction from 'fraction.js';
import { parseFraction } from './number.js';
import { nearestClause } from './nearest-name.js';
import { UserError } from './user-error.js';

export type LengthUnit = 'in' | 'mm';

export interface LengthOptions {
  /** The unit of a number that stands alone; without it a lone number is refused. */
  readonly unit?: LengthUnit;
  /** Names the length in the sentence of an error: "bore". */
  readonly what?: string;
  /** Which signs are allowed; "any" if not given. */
  readonly sign?: 'any' | 'not-negative' | 'positive';
}

/** Exact millimetres of each unit; the inch is 25.4 mm by definition (1959). */
const millimetres: Readonly<Record<string, Fraction>> = {
  mm: new Fraction(1),
  cm: new Fraction(10),
  m: new Fraction(1000),
  um: new Fraction(1, 1000),
  in: new Fraction(127, 5),
  thou: new Fraction(127, 5000),
  ft: new Fraction(1524, 5),
};

const synonyms: Readonly<Record<string, string>> = {
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
  '”': 'in',
  µm: 'um',
  μm: 'um',
  micron: 'um',
  microns: 'um',
  millimetre: 'mm',
  millimetres: 'mm',
  foot: 'ft',
  feet: 'ft',
};

const allowedUnits = 'mm, in (or "), thou, um, cm, m or ft';

/**
 * A length in millimetres from what a workshop writes: "5/16 in", `1-1/2"`, "0.3125in", "10 thou", "2.5 mm".
 * @throws UserError for no number, an unknown or missing unit, or a sign that is not allowed.
 */
export function parseLength(text: string, options: LengthOptions = {}): number {
  const what = options.what ?? 'length';
  const match = /^\s*([+-]?[\d\s./,-]*\d\.?|[+-]?\.\d+)\s*([^\d\s./-].*?)?\.?\s*$/u.exec(text);
  if (match?.[1] === undefined) {
    throw new UserError(`${what} "${text.trim()}" is not a length: write a number and a unit (${allowedUnits}), such as 5/16 in or 2.5 mm.`);
  }
  const written = match[2]?.toLowerCase() ?? options.unit;
  if (written === undefined) {
    throw new UserError(`${what} "${text.trim()}" has no unit: write ${text.trim()} mm or ${text.trim()} in (allowed are ${allowedUnits}).`);
  }
  if (/^e[+-]?\d/.test(written)) throw new UserError(`${what} "${text.trim()}" is written with an exponent: write the number out, such as 0.001 in or 2500 mm.`);
  const factor = millimetres[synonyms[written] ?? written];
  if (factor === undefined) {
    throw new UserError(`${what} "${text.trim()}" has the unknown unit "${written}": allowed are ${allowedUnits}${nearestClause(written, Object.keys(millimetres))}.`);
  }
  const value = parseFraction(match[1], what).mul(factor).valueOf();
  if (options.sign === 'positive' && value <= 0) throw new UserError(`${what} "${text.trim()}" must be more than nought.`);
  if (options.sign === 'not-negative' && value < 0) throw new UserError(`${what} "${text.trim()}" must not be negative.`);
  return value;
}
