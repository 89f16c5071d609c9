import { nearestClause } from '../engine/units/nearest-name.js';
import { UserError } from '../engine/units/user-error.js';
import type { PartGenerator } from '../engine/part/generator.js';
import { modulesIn } from './modules-in.js';

/** Names of the built-in parts, sorted: one file each in generators/parts, named as the part. */
export const builtInParts = (): readonly string[] => builtInModules().map(([name]) => name);

/** A built-in part. @throws TypeError where there is none of that name. */
export async function builtInPart(name: string): Promise<PartGenerator> {
  const address = new Map(builtInModules()).get(name);
  if (address === undefined) throw new TypeError(`no built-in part "${name}"`);
  return ((await import(address)) as { default: PartGenerator }).default;
}

/**
 * The part that a word on the command line stands for: a built-in part's name, or the path of a module.
 * @throws UserError where there is none, or the module is not one.
 */
export async function findPart(word: string): Promise<PartGenerator> {
  if (/[/\\]|\.[cm]?[jt]s$/.test(word)) return (await import('./load-part.js')).loadPart(word);
  const names = builtInParts();
  if (names.includes(word)) return builtInPart(word);
  if (word === '') throw new UserError(`The part's name is empty: there are ${names.join(', ')}.`);
  throw new UserError(
    `"${word}" is not a part: there are ${names.join(', ')}${nearestClause(word, names)}; a file of your own is given with its path, as in ./${/^[\w-]{1,40}$/.test(word) ? word : 'my-part'}.ts.`,
  );
}

const builtInModules = () => modulesIn(new URL('../generators/parts/', import.meta.url));
