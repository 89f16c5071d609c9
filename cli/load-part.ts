import { statSync, type Stats } from 'node:fs';
import { resolve } from 'node:path';
import { createJiti } from 'jiti';
import { checkGenerator } from '../engine/part/check-generator.js';
import type { PartGenerator } from '../engine/part/generator.js';
import { guardGenerator } from '../engine/part/guard-generator.js';
import { UserError } from '../engine/units/user-error.js';
import { keepOutput } from './output.js';
import { loadOwnCode } from './own-code.js';
import { systemReason } from './system-reason.js';

/**
 * The part that a TypeScript or JavaScript module describes. Types are stripped, not checked. The module imports
 * "trialpiece" wherever it lies, and gets the program's own copy.
 * @param path as the user wrote it; errors name it so.
 * @throws UserError where there is no such file, the module throws, or its default export is not a part.
 */
export async function loadPart(path: string): Promise<PartGenerator> {
  if (!statOf(path).isFile()) throw new UserError(`${path} is not a file: give the path of a module that describes a part.`);
  const author: unknown = await import('../engine/part/author/index.js');
  const jiti = createJiti(import.meta.url, {
    fsCache: false,
    moduleCache: false,
    interopDefault: false,
    virtualModules: { trialpiece: author },
  });
  const address = resolve(path);
  keepOutput();
  const module = await loadOwnCode(path, address, () => jiti.import(address));
  return guardGenerator(checkGenerator((module as { readonly default?: unknown }).default, path), path);
}

function statOf(path: string): Stats {
  try {
    return statSync(path);
  } catch (error) {
    const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined;
    if (code === undefined) throw error;
    throw new UserError(code === 'ENOENT' || code === 'ENOTDIR' ? `There is no file ${path}.` : `${path} cannot be read: ${systemReason(code)}.`, { cause: error });
  }
}
