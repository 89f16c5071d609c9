import { parseAngle } from '../../units/angle.js';
import { parseLength, type LengthUnit } from '../../units/length.js';
import { nearestClause } from '../../units/nearest-name.js';
import { parseNumber } from '../../units/number.js';
import { forceUnits, parseQuantity, stressUnits, surfaceSpeedUnits, temperatureRiseUnits } from '../../units/quantity.js';
import { UserError } from '../../units/user-error.js';
import { findMaterial } from '../materials.js';
import { findThread } from '../threads.js';
import { SumValues, type Point, type SumValue } from './values.js';
import type { Sum, SumArgument } from './sum.js';

/** No workshop goes beyond: lengths to a kilometre, other numbers to a thousand million. The sums stay finite within. */
const longest = 1e6;
const shortest = 1e-6;
const largest = 1e9;

function checkedLength(value: number, text: string, name: string): number {
  if (Math.abs(value) > longest) throw new UserError(`${name} "${text.trim()}" is too long for these sums: at most ${longest / 1000} m.`);
  if (value !== 0 && Math.abs(value) < shortest) throw new UserError(`${name} "${text.trim()}" is too short for these sums: at least ${shortest * 1000} um.`);
  return value;
}

function checkedNumber(value: number, text: string, { name, kind, sign = 'positive' }: SumArgument): number {
  if (Math.abs(value) > largest || (value !== 0 && Math.abs(value) < 1 / largest)) throw new UserError(`${name} "${text.trim()}" is out of reach of these sums: from ${1 / largest} to ${largest}.`);
  if (kind === 'count' && !(Number.isInteger(value) && value > 0)) throw new UserError(`${name} "${text}" must be a whole number above nought.`);
  if (kind === 'count' && value > 1000) throw new UserError(`${name} "${text}" is too many: at most 1000.`);
  if (sign === 'positive' && value <= 0) throw new UserError(`${name} "${text}" must be more than nought.`);
  if (sign === 'not-negative' && value < 0) throw new UserError(`${name} "${text}" must not be negative.`);
  return value;
}

function readPoints(text: string, what: string, unit: LengthUnit | undefined): readonly Point[] {
  const pairs = text.split(';').map((pair) => pair.trim()).filter((pair) => pair !== '');
  if (pairs.length === 0 || pairs.length > 1000) throw new UserError(`${what} has ${pairs.length} points: from 1 to 1000 are allowed.`);
  return pairs.map((pair): Point => {
    const [x, y, ...more] = pair.split(',');
    if (x === undefined || y === undefined || more.length > 0) throw new UserError(`${what} "${pair}" is not a point: write x,y pairs with a semicolon between, such as "0mm,0mm; 12mm,5mm".`);
    const options = { what, ...(unit === undefined ? {} : { unit }) };
    return [checkedLength(parseLength(x, options), x, what), checkedLength(parseLength(y, options), y, what)];
  });
}

function readChoice(text: string, { name, choices = [] }: SumArgument): string {
  const word = text.trim().toLowerCase();
  const choice = choices.find((candidate) => candidate.toLowerCase() === word);
  if (choice === undefined) throw new UserError(`${name} "${text.trim()}" is not allowed: choose ${choices.join(', ')}${nearestClause(text, choices)}.`);
  return choice;
}

function readValue(text: string, argument: SumArgument, unit: LengthUnit | undefined): SumValue {
  const { name, kind } = argument;
  const lengthOptions = { what: name, sign: argument.sign ?? ('positive' as const), ...(unit === undefined ? {} : { unit }) };
  switch (kind) {
    case 'length':
      return checkedLength(parseLength(text, lengthOptions), text, name);
    case 'lengths':
      return text.split(/[,;]/).map((part) => checkedLength(parseLength(part, lengthOptions), part, name));
    case 'points':
      return readPoints(text, name, unit);
    case 'angle':
      return checkedNumber(parseAngle(text, { what: name }), text, argument);
    case 'count':
    case 'number':
      return checkedNumber(parseNumber(text.replace(/\s*%$/, ''), name), text, argument);
    case 'force':
      return checkedNumber(parseQuantity(text, forceUnits, name), text, argument);
    case 'stress':
      return checkedNumber(parseQuantity(text, stressUnits, name), text, argument);
    case 'surface-speed':
      return checkedNumber(parseQuantity(text, surfaceSpeedUnits, name), text, argument);
    case 'temperature-rise':
      return checkedNumber(parseQuantity(text, temperatureRiseUnits, name), text, argument);
    case 'choice':
      return readChoice(text, argument);
    case 'thread':
      return findThread(text).designation;
    case 'material':
      return findMaterial(text).name;
    case 'drill':
    case 'class':
    case 'text':
      return text.trim();
  }
}

/**
 * Reads what the user wrote for a sum.
 * @param unit the unit of lengths that stand without one; without it such a length is refused.
 * @throws UserError for an unknown or missing argument, or one that cannot be read.
 */
export function readArguments(sum: Sum, texts: Readonly<Record<string, string>>, unit?: LengthUnit): SumValues {
  const names = sum.arguments.map(({ name }) => name);
  const unknown = Object.keys(texts).find((name) => !names.includes(name));
  if (unknown !== undefined) throw new UserError(`${sum.name} has no argument "${unknown}": it takes ${names.join(', ')}${nearestClause(unknown, names)}.`);
  const values = new Map<string, SumValue>();
  for (const argument of sum.arguments) {
    const text = texts[argument.name] ?? argument.default;
    if (text !== undefined) values.set(argument.name, readValue(text, argument, unit));
    else if (argument.required === true) throw new UserError(`${sum.name} needs ${argument.name}: ${argument.about}.`);
  }
  return new SumValues(values);
}
