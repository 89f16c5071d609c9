import { UserError } from '../engine/units/user-error.js';
import type { Arguments } from './command.js';
import { optionText } from './option.js';

/**
 * The whole number given for an option, undefined where it is not given.
 * @throws UserError for anything else, or a number outside the limits.
 */
export function optionCount(given: Arguments, name: string, least: number, most: number): number | undefined {
  const text = optionText(given, name);
  if (text === undefined) return undefined;
  const value = Number(text);
  if (!/^\d+$/.test(text) || value < least || value > most) throw new UserError(`--${name} "${text}" is no whole number from ${String(least)} to ${String(most)}.`);
  return value;
}

/**
 * The whole numbers of a list with commas, each once, undefined where it is not given.
 * @throws UserError for anything else in the list.
 */
export function optionNumbers(given: Arguments, name: string, what: string): readonly number[] | undefined {
  const text = optionText(given, name);
  if (text === undefined) return undefined;
  const words = text.split(',').map((word) => word.trim());
  for (const word of words) if (!/^[1-9]\d{0,5}$/.test(word)) throw new UserError(`--${name} "${text}" is no list of ${what}: "${word}" is no whole number; write them as 90,100.`);
  return [...new Set(words.map(Number))];
}
