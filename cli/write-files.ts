import { mkdir, mkdtemp, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { UserError } from '../engine/units/user-error.js';

export interface NamedFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/**
 * Writes a set of files, all or none as far as a file system allows: everything is first written in a folder beside, then
 * renamed into place. A folder made for the purpose goes again where the writing fails.
 * @returns the paths written, in the order given.
 * @throws UserError where the folder cannot be written, or a folder stands where a file should go.
 */
export async function writeFiles(folder: string, files: readonly NamedFile[]): Promise<readonly string[]> {
  let made: string | undefined;
  let beside: string | undefined;
  try {
    made = await mkdir(folder, { recursive: true });
    await refuseFolders(folder, files);
    beside = await mkdtemp(join(folder, '.unfinished-'));
    for (const file of files) await writeFile(join(beside, file.name), file.content, { flush: true });
    for (const file of files) await rename(join(beside, file.name), join(folder, file.name));
    await rm(beside, { recursive: true });
    return files.map(({ name }) => join(folder, name));
  } catch (error) {
    const remains = made ?? beside;
    if (remains !== undefined) await rm(remains, { recursive: true, force: true });
    throw unwritable(folder, error);
  }
}

async function refuseFolders(folder: string, files: readonly NamedFile[]): Promise<void> {
  for (const { name } of files) {
    const found = await stat(join(folder, name)).catch(() => undefined);
    if (found?.isDirectory() === true) throw new UserError(`${join(folder, name)} is a folder: the print cannot be written in its place.`);
  }
}

/** What the system's error codes mean to a user. */
const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'you have no right to write there',
  EPERM: 'you have no right to write there',
  EROFS: 'it is read-only',
  ENOENT: 'there is no such place',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the quota is used up',
  EEXIST: 'a file of that name is in the way',
  ENOTDIR: 'a file is in the way',
  ENAMETOOLONG: 'the name is too long',
};

function unwritable(folder: string, error: unknown): unknown {
  const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined;
  if (code === undefined) return error;
  return new UserError(`The folder ${folder} cannot be written: ${REASONS[code] ?? code}; nothing was written.`, { cause: error });
}
