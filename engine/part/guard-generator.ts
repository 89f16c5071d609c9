import { UserError } from '../units/user-error.js';
import { checkPart } from './check-part.js';
import { checkRelations } from './check-relations.js';
import type { PartGenerator } from './generator.js';
import type { Loads } from './loads.js';
import { thrownWords } from './thrown-words.js';

/**
 * A generator of the user's own, made safe to call: what its functions throw becomes a UserError that names the file and
 * the function, and what they give is checked. A UserError is kept, with the file and the function before it.
 */
export function guardGenerator(generator: PartGenerator, file: string): PartGenerator {
  const guarded = <A, R>(name: string, call: (argument: A) => R, check: (result: R, file: string) => R) => (argument: A): R => {
    try {
      return check(call(argument), file);
    } catch (error) {
      if (error instanceof UserError) throw error.message.startsWith(`${file}: `) ? error : new UserError(`${file}: ${name} throws: ${error.message}`, { cause: error });
      throw new UserError(`${file}: ${name} throws: ${thrownWords(error)}.`, { cause: error });
    }
  };
  return {
    ...generator,
    relations: guarded('relations', generator.relations, checkRelations),
    build: guarded('build', generator.build, checkPart),
    ...(generator.loads === undefined ? {} : { loads: guardedLoads(generator.loads, file) }),
  };
}

const guardedLoads = <V>(loads: Loads<V>, file: string): Loads<V> => ({
  ...loads,
  checks: (values, engine) => {
    try {
      return loads.checks(values, engine);
    } catch (error) {
      throw new UserError(`${file}: loads throws: ${thrownWords(error)}.`, { cause: error });
    }
  },
});
