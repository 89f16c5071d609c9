import { readdirSync } from 'node:fs';

/**
 * The modules that lie in a folder, sorted by name, as [name without ending, address for `import()`]. Compiled or not:
 * declarations do not count.
 */
export function modulesIn(folder: URL): readonly (readonly [string, string])[] {
  return readdirSync(folder)
    .filter((file) => /(?<!\.d)\.[jt]s$/.test(file))
    .map((file) => [file.slice(0, -3), new URL(file, folder).href] as const)
    .sort(([a], [b]) => (a < b ? -1 : 1));
}
