import { readFileSync } from 'node:fs';
import { packageFile } from './package-file.js';

/** The version that package.json states. */
export const programVersion = (): string =>
  (JSON.parse(readFileSync(packageFile('package.json'), 'utf8')) as { readonly version: string }).version;
