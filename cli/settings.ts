import { UserError } from '../engine/units/user-error.js';
import type { Arguments } from './command.js';

/**
 * The parameters given as `--set name=value`, by name, values as written.
 * @throws UserError for a word that is not name=value, and for a name given twice.
 */
export function settingsOf(given: Arguments): Readonly<Record<string, string>> {
  const words = given['set'] === undefined ? [] : (given['set'] as readonly unknown[]).map(String);
  const settings = new Map<string, string>();
  for (const word of words) {
    const [, name, value] = /^\s*([^=\s]+)\s*=\s*(.*?)\s*$/.exec(word) ?? [];
    if (name === undefined || value === undefined || value === '') {
      throw new UserError(`--set "${word}" is not name=value: write it as in --set bore="5/16 in", and put the part's name before --set.`);
    }
    if (settings.has(name)) throw new UserError(`${name} is set twice, to "${settings.get(name) ?? ''}" and to "${value}": set it once.`);
    settings.set(name, value);
  }
  return Object.fromEntries(settings);
}
