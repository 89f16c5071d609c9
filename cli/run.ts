import yargs from 'yargs';
import { UserError } from '../engine/units/user-error.js';
import { collectCommands } from './collect-commands.js';
import type { Command } from './command.js';
import { Mistakes } from './mistakes.js';
import { joinNegatives } from './negative-values.js';
import { programVersion } from './program-version.js';
import { commandFirst, commandOf, refuseUnknownOptions, usageError } from './usage-error.js';

/** Exit status for a mistake of the user, and for a fault of the program. */
const USER_MISTAKE = 2;
const PROGRAM_FAULT = 1;

/**
 * Runs one command line.
 * @param words what follows the program's name.
 * @returns the exit status; what went wrong is told on standard error.
 */
export async function run(words: readonly string[]): Promise<number> {
  try {
    const commands = await commandsFor(words);
    refuseUnknownOptions(words, commands);
    return await parse(joinNegatives(commandFirst(words, commands), commands), commands);
  } catch (error) {
    if (error instanceof UserError) {
      for (const sentence of error instanceof Mistakes ? error.sentences : [error.message]) console.error(oneSentence(sentence));
      return USER_MISTAKE;
    }
    console.error('This is a fault of trialpiece, not of what you gave it:');
    console.error(error);
    return PROGRAM_FAULT;
  }
}

/** Every command; the one asked for with the options that this command line gives it. */
async function commandsFor(words: readonly string[]): Promise<readonly Command[]> {
  const commands = await collectCommands();
  const asked = commandOf(words, commands);
  const made = await asked?.forWords?.(words);
  return made === undefined ? commands : commands.map((command) => (command === asked ? made : command));
}

/** Runs the command that the words name; gives its exit status. */
async function parse(words: readonly string[], commands: readonly Command[]): Promise<number> {
  let status = 0;
  const parser = yargs([...words])
    .scriptName('trialpiece')
    .usage('$0 <command>\n\nTrue-scale shop prints of one-off miniature locomotive parts.')
    .locale('en')
    .version(programVersion())
    .parserConfiguration({
      'camel-case-expansion': false,
      'dot-notation': false,
      'parse-numbers': false,
      'parse-positional-numbers': false,
      'boolean-negation': false,
    })
    .strict()
    .exitProcess(false)
    .showHelpOnFail(false)
    .fail((complaint: string | null, error: Error | undefined) => {
      if (error !== undefined && error.name !== 'YError') throw error;
      throw usageError(error?.message ?? complaint ?? '', words, commands);
    })
    .demandCommand(1)
    .example(examplesOf(commands, 1))
    .wrap(110);
  for (const command of commands) {
    parser.command(
      `${command.name} ${command.takes}`.trim(),
      command.summary,
      (builder) => {
        for (const [name, positional] of Object.entries(command.positionals)) builder.positional(name, positional);
        return builder.options(command.options).example(examplesOf([command])).epilogue(command.epilogue ?? '');
      },
      async (given) => {
        const outcome = await command.run(given);
        status = typeof outcome === 'number' ? outcome : 0;
      },
    );
  }
  await parser.parseAsync();
  return status;
}

const examplesOf = (commands: readonly Command[], most = Infinity): [string, string][] =>
  commands.flatMap(({ examples }) => examples.slice(0, most).map(([line, does]): [string, string] => [`$0 ${line}`, does]));

/** Longer words, and longer quotations, are cut short. */
const LONGEST = { quoted: 100, word: 260 } as const;

const cutShort = (text: string, most: number): string => (text.length > most ? `${text.slice(0, Math.round(most * 0.8))}...` : text);

/** One line with a stop at its end, whatever went into it; what was quoted at length is cut short. */
const oneSentence = (message: string): string =>
  `${message
    .replace(/"(?! )([^"]*[^" ])"/g, (_, quoted: string) => `"${cutShort(quoted, LONGEST.quoted)}"`)
    .replace(/[\s\p{Cc}]+/gu, ' ')
    .replace(/\S+/g, (word) => cutShort(word, LONGEST.word))
    .trim()
    .replace(/\.$/, '')}.`;
