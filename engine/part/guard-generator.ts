import { UserError } from '../units/user-error.js';
import { checkPart } from './check-part.js';
import type { PartGenerator } from './generator.js';

/**
 * A generator of the user's own, made safe to call: what its functions throw becomes a UserError that names the file and
 * the function, and what `build` gives is checked. A UserError passes as it is.
 */
export function guardGenerator(generator: PartGenerator, file: string): PartGenerator {
  const guarded = <A, R>(name: string, call: (argument: A) => R) => (argument: A): R => {
    try {
      return call(argument);
    } catch (error) {
      if (error instanceof UserError) throw error;
      const message = error instanceof Error ? error.message : String(error);
      throw new UserError(`${file}: ${name} throws: ${(message.split('\n')[0] ?? '').replace(/\.$/, '')}.`, { cause: error });
    }
  };
  const build = guarded('build', generator.build);
  return { ...generator, relations: guarded('relations', generator.relations), build: (values) => checkPart(build(values), file) };
}
