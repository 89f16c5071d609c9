import { thrownWords } from '../engine/part/thrown-words.js';
import { UserError } from '../engine/units/user-error.js';

const exit = process.exit.bind(process);

/**
 * Guards the program against what a module of the user's own may do beside giving a part: end the program, never finish
 * loading, or throw later from a timer or a promise that nobody waits for.
 * @param path as the user wrote it; errors name it so.
 * @param address where the module lies; errors whose stack names it are the module's.
 * @param load loads the module.
 * @throws UserError where it ends the program, never finishes, or throws.
 */
export async function loadOwnCode(path: string, address: string, load: () => Promise<unknown>): Promise<unknown> {
  process.exit = (): never => {
    throw new UserError(`${path} ends the program: take process.exit out of it.`);
  };
  process.on('uncaughtException', (error: unknown) => {
    const own = error instanceof Error && error.stack?.includes(address) === true;
    console.error(own ? `${path} throws outside of its functions: ${thrownWords(error)}.` : error);
    exit(own ? 2 : 1);
  });
  const folder = process.cwd();
  return new Promise((settle, refuse) => {
    const never = (): void => {
      refuse(new UserError(`${path} never finishes loading: what it awaits does not come.`));
    };
    process.once('beforeExit', never);
    load()
      .then(settle, (error: unknown) => {
        refuse(error instanceof UserError ? error : new UserError(`${path} cannot be loaded: ${thrownWords(error)}${placeIn(error)}.`, { cause: error }));
      })
      .finally(() => {
        process.off('beforeExit', never);
        // Files go where the user is, wherever the module has gone.
        process.chdir(folder);
      });
  });
}

/** Where in a text that does not parse: the message tells it as its path with line and column. */
function placeIn(error: unknown): string {
  const [, line, column] = /:(\d+):(\d+)\s*$/.exec(error instanceof Error ? error.message : '') ?? [];
  return line === undefined || column === undefined ? '' : ` at line ${line}, column ${column}`;
}
