import { commandOf } from './usage-error.js';
import type { Command } from './command.js';

/**
 * The command line with each value that begins with a minus joined to its option, as in --x=-5mm: alone the parser would
 * take -5mm for a row of one-letter options.
 */
export function joinNegatives(words: readonly string[], commands: readonly Command[]): readonly string[] {
  const options = commandOf(words, commands)?.options ?? {};
  const takesValue = (word: string | undefined): boolean =>
    word?.startsWith('--') === true && Object.entries(options).some(([name, { type, array }]) => `--${name}` === word && type === 'string' && array !== true);
  const joined: string[] = [];
  for (const word of words) {
    const before = joined.at(-1);
    if (before !== undefined && /^-[\d.]/.test(word) && takesValue(before)) joined[joined.length - 1] = `${before}=${word}`;
    else joined.push(word);
  }
  return joined;
}
