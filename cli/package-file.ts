import { existsSync } from 'node:fs';

/** The address of a file of the package, from the compiled program as well as from its source. */
export function packageFile(path: string): URL {
  const fromSource = new URL(`../${path}`, import.meta.url);
  return existsSync(fromSource) ? fromSource : new URL(`../../${path}`, import.meta.url);
}
