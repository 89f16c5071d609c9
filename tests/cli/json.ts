import { expect } from 'vitest';
import { inFolder, trialpiece } from './program.js';

/** What a command line with `--json` writes, read back; nothing else may be written, and the status is 0. */
export async function json(...words: readonly string[]): Promise<unknown> {
  let value: unknown;
  await inFolder({}, (folder) => {
    const { status, stdout, stderr } = trialpiece(folder, ...words, '--json');
    expect(stderr).toBe('');
    expect(status).toBe(0);
    value = JSON.parse(stdout);
  });
  return value;
}

/** A command line as one text; words in double quotes stay together. */
export const wordsOf = (line: string): readonly string[] => [...line.matchAll(/(\S*?)"([^"]*)"|\S+/g)].map(([whole, before, quoted]) => (quoted === undefined ? whole : `${before ?? ''}${quoted}`));
