import { expect } from 'vitest';
import { everythingIn, inFolder, trialpiece } from './program.js';

/**
 * Expects a command line to be refused as a user's mistake: that sentence and nothing else on standard error, nothing on
 * standard output, status 2, and no file or folder that was not there before.
 */
export function expectRefusal(words: readonly string[], sentence: string | RegExp, files: Readonly<Record<string, string>> = {}): Promise<void> {
  return inFolder(files, (folder) => {
    const before = everythingIn(folder);
    const { status, stdout, stderr } = trialpiece(folder, ...words);
    const line = stderr.replace(/\n$/, '');
    if (typeof sentence === 'string') expect(line).toBe(sentence);
    else expect(line).toMatch(sentence);
    expect(line).not.toContain('\n');
    expect(stdout).toBe('');
    expect(status).toBe(2);
    expect(everythingIn(folder)).toEqual(before);
  });
}
