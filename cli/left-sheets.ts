import { readdir } from 'node:fs/promises';
import type { NamedFile } from './named-file.js';

/**
 * The names of sheets in a folder that an older print of the documents being written left: files numbered as theirs are, and
 * not written anew. A sheet that has a record of its own beside it belongs to another document, whose name ends in a number.
 */
export async function leftSheets(folder: string, files: readonly NamedFile[]): Promise<readonly string[]> {
  const stems = new Set(files.flatMap(({ sheetOf }) => (sheetOf === undefined ? [] : [sheetOf])));
  if (stems.size === 0) return [];
  const written = new Set(files.map(({ name }) => name));
  const found = await readdir(folder, { withFileTypes: true });
  const there = new Set(found.map(({ name }) => name));
  return found.flatMap((entry) => {
    const [, stem, number] = /^(.+?)(?:-([1-9]\d*))?\.svg$/.exec(entry.name) ?? [];
    if (!entry.isFile() || written.has(entry.name) || stem === undefined) return [];
    // The whole name may be a stem too: the one sheet of a document.
    if (stems.has(entry.name.slice(0, -'.svg'.length))) return [entry.name];
    return number !== undefined && stems.has(stem) && !there.has(`${stem}-${number}.json`) ? [entry.name] : [];
  });
}
