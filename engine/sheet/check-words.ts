import { cautions } from '../../templates/cautions.js';
import { titleFields } from '../../templates/title-block.js';
import { missingCharacters } from '../lettering/index.js';
import type { Part } from '../part/part.js';
import { nearestClause } from '../units/nearest-name.js';
import { UserError } from '../units/user-error.js';

/** No text on a sheet is longer, characters: it would fill a column by itself. */
const longest = 400;

/**
 * Checks the words of a part before they go on a sheet: cautions that there are, titles that the title block holds, and
 * characters that can be lettered.
 * @throws UserError for the first that is not so.
 */
export function checkWords(part: Part): void {
  const known = Object.keys(cautions);
  for (const id of [...part.cautions, ...part.operations.flatMap(({ caution }) => caution ?? [])]) {
    if (!known.includes(id)) throw new UserError(`the ${part.name} has no caution "${id}": there are ${known.join(', ')}${nearestClause(id, known)}`);
  }
  for (const [what, words, { longest: most }] of [
    ['title', part.title, titleFields.part],
    ['engine', part.engine, titleFields.supplement],
  ] as const) {
    if ([...words].length > most) throw new UserError(`the ${what} "${words.trim()}" has ${[...words].length} characters: the title block holds ${most} at most`);
  }
  for (const words of textsIn(part, new Set())) {
    if (words.length > longest) throw new UserError(`the ${part.name} has a text of ${words.length} characters, "${words.trim()}": ${longest} at most`);
    const [missing] = missingCharacters(words.replaceAll('\n', ''), 'normal');
    if (missing !== undefined) throw new UserError(`the ${part.name} has the text "${words.trim()}" with a character that can't be lettered: ${named(missing)}`);
  }
}

/** Every text in plain data, wherever it stands. */
function* textsIn(data: unknown, seen: Set<unknown>): Generator<string> {
  if (typeof data === 'string') yield data;
  if (typeof data !== 'object' || data === null || seen.has(data)) return;
  seen.add(data);
  for (const value of Object.values(data)) yield* textsIn(value, seen);
}

/** A character by its number, and itself where it is to be seen. */
function named(character: string): string {
  const number = `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
  return /[\p{C}\p{Z}]/u.test(character) ? number : `${number} "${character}"`;
}
