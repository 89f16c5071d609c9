import { parseNumber } from './number.js';
import { nearestClause } from './nearest-name.js';
import { UserError } from './user-error.js';

/** Units of one kind of quantity and what each is in the unit in which it is kept. */
export interface QuantityUnits {
  readonly kept: string;
  readonly units: Readonly<Record<string, number>>;
}

const standardGravity = 9.80665;
const poundForce = 4.4482216152605;

/** Newtons. */
export const forceUnits: QuantityUnits = { kept: 'N', units: { N: 1, kN: 1000, lbf: poundForce, lb: poundForce, kgf: standardGravity, kg: standardGravity } };
/** Megapascals, which are N/mm2. */
export const stressUnits: QuantityUnits = {
  kept: 'MPa',
  units: { MPa: 1, 'N/mm2': 1, GPa: 1000, bar: 0.1, psi: poundForce / 25.4 ** 2, ksi: (1000 * poundForce) / 25.4 ** 2, 'lbf/in2': poundForce / 25.4 ** 2 },
};
/** Metres a minute. */
export const surfaceSpeedUnits: QuantityUnits = { kept: 'm/min', units: { 'm/min': 1, 'm/s': 60, 'ft/min': 0.3048, fpm: 0.3048, sfm: 0.3048 } };
/** Kelvin, as a difference of temperature. */
export const temperatureRiseUnits: QuantityUnits = { kept: 'K', units: { K: 1, C: 1, '°C': 1, F: 5 / 9, '°F': 5 / 9 } };

/**
 * A number and its unit, in the unit kept: "27 lbf", "120 N", "51 ksi". A number alone is refused, for a force or a
 * stress without a unit is read two ways.
 * @throws UserError for no number, or a missing or unknown unit.
 */
export function parseQuantity(text: string, quantity: QuantityUnits, what: string): number {
  const allowed = Object.keys(quantity.units).join(', ');
  const match = /^\s*([+-]?[\d\s./-]*\d\.?|[+-]?\.\d+)\s*(\S.*?)?\s*$/u.exec(text);
  if (match?.[1] === undefined) throw new UserError(`${what} "${text.trim()}" is not understood: write a number and a unit (${allowed}).`);
  const unit = match[2];
  if (unit === undefined) throw new UserError(`${what} "${text.trim()}" has no unit: allowed are ${allowed}.`);
  const name = Object.keys(quantity.units).find((known) => known === unit) ?? Object.keys(quantity.units).find((known) => known.toLowerCase() === unit.toLowerCase());
  const factor = name === undefined ? undefined : quantity.units[name];
  if (factor === undefined) throw new UserError(`${what} "${text.trim()}" has the unknown unit "${unit}": allowed are ${allowed}${nearestClause(unit, Object.keys(quantity.units))}.`);
  return parseNumber(match[1], what) * factor;
}
