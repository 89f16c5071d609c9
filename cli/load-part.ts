import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import { createJiti } from 'jiti';
import { checkGenerator } from '../engine/part/check-generator.js';
import type { PartGenerator } from '../engine/part/generator.js';
import { guardGenerator } from '../engine/part/guard-generator.js';
import { UserError } from '../engine/units/user-error.js';

/**
 * The part that a TypeScript or JavaScript module describes. Types are stripped, not checked. The module imports
 * "trialpiece" wherever it lies, and gets the program's own copy.
 * @param path as the user wrote it; errors name it so.
 * @throws UserError where there is no such file, the module throws, or its default export is not a part.
 */
export async function loadPart(path: string): Promise<PartGenerator> {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (stat === undefined) throw new UserError(`There is no file ${path}.`);
  if (!stat.isFile()) throw new UserError(`${path} is not a file: give the path of a module that describes a part.`);
  const author: unknown = await import('../engine/part/author/index.js');
  const jiti = createJiti(import.meta.url, {
    fsCache: false,
    moduleCache: false,
    interopDefault: false,
    virtualModules: { trialpiece: author },
  });
  let module: unknown;
  try {
    module = await jiti.import(resolve(path));
  } catch (error) {
    throw new UserError(`${path} cannot be loaded: ${firstLine(error)}.`);
  }
  return guardGenerator(checkGenerator((module as { readonly default?: unknown }).default, path), path);
}

const firstLine = (error: unknown): string =>
  ((error instanceof Error ? error.message : String(error)).split('\n')[0] ?? '').trim().replace(/\.$/, '');
