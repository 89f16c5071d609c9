import type { Options, PositionalOptions } from 'yargs';

/** What the command line holds after parsing: options and positionals by name, not yet checked. */
export type Arguments = Readonly<Record<string, unknown>>;

/** One command; the default export of a file in cli/commands. */
export interface Command {
  readonly name: string;
  /** Positionals as the help shows them: "<part>", "[what]", or nothing. */
  readonly takes: string;
  readonly summary: string;
  readonly positionals: Readonly<Record<string, PositionalOptions>>;
  readonly options: Readonly<Record<string, Options>>;
  /** Command lines without the program's name, each with what it does. */
  readonly examples: readonly (readonly [string, string])[];
  /** What sentences call it, if not by its name. */
  readonly title?: string;
  /** What the help tells at its end. */
  readonly epilogue?: string;
  /** The command as a command line makes it, where its options hang on what is asked: loads what that takes. */
  readonly forWords?: (words: readonly string[]) => Promise<Command>;
  /** Writes the result to standard output; rejects with UserError for a mistake of the user. A number that it resolves to is the exit status. */
  readonly run: (given: Arguments) => Promise<unknown>;
}
