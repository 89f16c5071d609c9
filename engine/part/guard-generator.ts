import { UserError } from '../units/user-error.js';
import type { PartGenerator } from './generator.js';

/**
 * A generator of the user's own, made safe to call: what its functions throw becomes a UserError that names the file and
 * the function. A UserError passes as it is.
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
  return { ...generator, relations: guarded('relations', generator.relations), build: guarded('build', generator.build) };
}
