import { mkdir, mkdtemp, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join, normalize } from 'node:path';
import { UserError } from '../engine/units/user-error.js';
import { leftSheets } from './left-sheets.js';
import type { NamedFile } from './named-file.js';
import { systemReason } from './system-reason.js';

export type { NamedFile };

/**
 * Writes a set of files, all or none as far as a file system allows: everything is first written in a folder beside, then
 * renamed into place; what stood there is kept until all is done, and comes back where the writing fails. A folder made for
 * the purpose goes again then. Sheets that a longer print of the same document left go once the new ones stand.
 * @returns the paths written, in the order given.
 * @throws UserError where the folder cannot be written, or a folder stands where a file should go.
 */
export async function writeFiles(folder: string, files: readonly NamedFile[]): Promise<readonly string[]> {
  let made: string | undefined;
  let beside: string | undefined;
  try {
    made = await makeFolder(normalize(folder));
    await refuseFolders(folder, files);
    beside = await mkdtemp(join(folder, '.unfinished-'));
    await writeAll(beside, files);
    await replace(folder, beside, files, await leftSheets(folder, files));
    await rm(beside, { recursive: true });
    return files.map(({ name }) => join(folder, name));
  } catch (error) {
    const remains = made ?? beside;
    if (remains !== undefined) await rm(remains, { recursive: true, force: true });
    throw unwritable(folder, error);
  }
}

/**
 * Makes a folder and those that it lies in. The system's own way to do so never ends where a file system refuses new
 * folders by saying that there is no such place.
 * @returns the uppermost that was made, undefined where all were there.
 */
async function makeFolder(folder: string): Promise<string | undefined> {
  const found = (path: string) => stat(path).catch(() => undefined);
  if ((await found(folder))?.isDirectory() === true) return undefined;
  const above = dirname(folder);
  const made = above === folder || (await found(above)) !== undefined ? undefined : await makeFolder(above);
  await mkdir(folder).catch(async (error: unknown) => {
    if (made !== undefined) await rm(made, { recursive: true, force: true });
    throw error;
  });
  return made ?? folder;
}

/** Writes the files side by side, for the disk takes its time over each; returns or throws only when none is being written. */
async function writeAll(folder: string, files: readonly NamedFile[]): Promise<void> {
  const written = await Promise.allSettled(files.map(({ name, content }) => writeFile(join(folder, name), content, { flush: true })));
  for (const each of written) if (each.status === 'rejected') throw each.reason;
}

/** Moves the files from the folder beside into their places and what is `left` of older ones out, or leaves every place as it was. */
async function replace(folder: string, beside: string, files: readonly NamedFile[], left: readonly string[]): Promise<void> {
  const undo: (() => Promise<void>)[] = [];
  try {
    for (const { name } of files) {
      const [place, old] = [join(folder, name), join(beside, `${name}.old`)];
      if (await rename(place, old).then(() => true, ifMissing)) undo.push(() => rename(old, place));
      await rename(join(beside, name), place);
      undo.push(() => rm(place));
    }
    for (const name of left) {
      const [place, old] = [join(folder, name), join(beside, `${name}.old`)];
      if (await rename(place, old).then(() => true, ifMissing)) undo.push(() => rename(old, place));
    }
  } catch (error) {
    for (const step of undo.reverse()) await step();
    throw error;
  }
}

function ifMissing(error: unknown): false {
  if (error instanceof Error && (error as NodeJS.ErrnoException).code === 'ENOENT') return false;
  throw error;
}

async function refuseFolders(folder: string, files: readonly NamedFile[]): Promise<void> {
  for (const { name } of files) {
    const found = await stat(join(folder, name)).catch(() => undefined);
    if (found?.isDirectory() === true) throw new UserError(`${join(folder, name)} is a folder: the print cannot be written in its place.`);
  }
}

function unwritable(folder: string, error: unknown): unknown {
  const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined;
  if (code === undefined) return error;
  return new UserError(`The folder ${folder} cannot be written: ${systemReason(code)}; nothing was written.`, { cause: error });
}
