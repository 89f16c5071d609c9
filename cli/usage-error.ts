import { nearestClause } from '../engine/units/nearest-name.js';
import { UserError } from '../engine/units/user-error.js';
import type { Command } from './command.js';

/** Options that every command knows. */
const STANDING = ['help', 'version'];

/**
 * Refuses an option that the command does not have, before anything is parsed: the parser would take the word after it for
 * its value and then miss that word elsewhere.
 * @param words the command line as given.
 * @throws UserError with the nearest option.
 */
export function refuseUnknownOptions(words: readonly string[], commands: readonly Command[]): void {
  const command = commandOf(words, commands);
  const known = [...Object.keys(command?.options ?? {}), ...STANDING].map((name) => `--${name}`);
  for (const [at, word] of words.entries()) {
    if (/^-+$/.test(word)) throw new UserError(`The word ${word} has no use here: leave it out.`);
    const option = /^-+[^\d.=-][^=]*/.exec(word)?.[0];
    if (option === undefined) continue;
    if (known.includes(option)) {
      if (word !== option && (command?.options[option.slice(2)]?.type ?? 'boolean') === 'boolean') throw new UserError(`${option} takes no value: write ${option} alone.`);
      // The parser would take these two words for the option's value.
      if (command?.options[option.slice(2)]?.type === 'boolean' && /^(true|false)$/.test(words[at + 1] ?? '')) throw new UserError(`${option} takes no value: write ${option} alone.`);
      continue;
    }
    const place = command === undefined ? 'an option' : `an option of ${command.title ?? command.name}`;
    throw new UserError(`${option} is not ${place}: there are ${known.join(', ')}${nearestClause(option, known)}.`);
  }
}

/**
 * The parser's complaint as one sentence in our own words, with the nearest name where a command's name is wrong.
 * @param complaint the parser's message, English.
 * @param words the command line as given.
 */
export function usageError(complaint: string, words: readonly string[], commands: readonly Command[]): UserError {
  const command = commandOf(words, commands);
  const names = commands.map(({ name }) => name);
  const [, unknown] = /^Unknown (?:argument|command)s?: ([^,]*)/.exec(complaint) ?? [];
  if (unknown !== undefined && command === undefined) {
    return new UserError(`"${unknown.replace(/^"|"$/g, '')}" is not a command: there are ${names.join(', ')}${nearestClause(unknown, names)}.`);
  }
  if (unknown !== undefined && command !== undefined) {
    return new UserError(`"${unknown}" is one word too many: ${command.title ?? command.name} takes just ${command.takes}${command.forWords === undefined ? '' : '; a value of several words needs quotes'}.`);
  }
  const [, bare] = /^Not enough arguments following: (.*)$/.exec(complaint) ?? [];
  if (bare !== undefined) return new UserError(`--${bare} needs a value after it.`);
  if (complaint.startsWith('Not enough non-option arguments')) {
    return command === undefined
      ? new UserError(`A command is missing: there are ${names.join(', ')}, and trialpiece --help tells more.`)
      : new UserError(`${command.name} needs ${command.takes}, as in trialpiece ${command.examples[0]?.[0] ?? command.name}${words.includes('--set') ? '; put it before --set, which takes all words that follow' : ''}.`);
  }
  return new UserError(`The command line is not understood: ${complaint.split('\n')[0] ?? ''}.`);
}

/** The command line with its command in front, where options stand before it. */
export function commandFirst(words: readonly string[], commands: readonly Command[]): readonly string[] {
  const at = words.indexOf(commandOf(words, commands)?.name ?? '');
  return at <= 0 ? words : [...words.slice(at, at + 1), ...words.slice(0, at), ...words.slice(at + 1)];
}

/** The command that a command line names, if it names one. */
export const commandOf = (words: readonly string[], commands: readonly Command[]): Command | undefined =>
  commands.find(({ name }) => name === words.find((word) => !word.startsWith('-')));
