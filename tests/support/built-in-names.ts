import { readdir } from 'node:fs/promises';

/** The names of all built-in parts, in their order. */
export async function builtInNames(): Promise<readonly string[]> {
  const files = await readdir(new URL('../../generators/parts/', import.meta.url));
  return files.filter((file) => file.endsWith('.ts')).map((file) => file.slice(0, -'.ts'.length)).sort();
}
