import { nearestClause } from '../engine/units/nearest-name.js';
import { UserError } from '../engine/units/user-error.js';
import type { Arguments } from './command.js';

/**
 * The text given for an option, undefined where it is not given.
 * @throws UserError where it is given twice or without a value.
 */
export function optionText(given: Arguments, name: string): string | undefined {
  const value = given[name];
  if (value === undefined) return undefined;
  if (Array.isArray(value)) throw new UserError(`--${name} is given more than once: give it one value.`);
  const text = String(value).trim();
  if (text === '') throw new UserError(`--${name} needs a value after it.`);
  return text;
}

/** As `optionText`, for a word that stands without an option before it. */
export const positionalText = (given: Arguments, name: string): string => String(given[name] ?? '').trim();

/** The words of a positional that takes several, as given. */
export const positionalWords = (given: Arguments, name: string): readonly string[] => [given[name] ?? []].flat().map(String);

/**
 * The word given for an option, checked against the words allowed.
 * @throws UserError for any other word, with the nearest.
 */
export function optionWord<T extends string>(given: Arguments, name: string, allowed: readonly T[]): T | undefined {
  const text = optionText(given, name);
  return text === undefined ? undefined : wordOf(text, `--${name}`, allowed);
}

/**
 * The words of a list with commas, each checked, none twice.
 * @throws UserError for a word that is not allowed, with the nearest.
 */
export function optionWords<T extends string>(given: Arguments, name: string, allowed: readonly T[]): readonly T[] | undefined {
  const text = optionText(given, name);
  if (text === undefined) return undefined;
  return [...new Set(text.split(',').map((word) => wordOf(word.trim(), `--${name}`, allowed)))];
}

/**
 * `text` as one of the words allowed; case does not matter.
 * @param where names the place in the sentence of an error: "--hand".
 * @throws UserError for any other word, with the nearest.
 */
export function wordOf<T extends string>(text: string, where: string, allowed: readonly T[]): T {
  const word = allowed.find((candidate) => candidate === text.toLowerCase());
  if (word !== undefined) return word;
  throw new UserError(`${where} "${text}" is not known: there are ${allowed.join(', ')}${nearestClause(text, allowed)}.`);
}

/** Whether an option that takes no value is given. */
export const optionFlag = (given: Arguments, name: string): boolean => given[name] === true;
