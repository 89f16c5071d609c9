import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, bench, describe } from 'vitest';

/** The compiled program as a whole process, from the shell's start to its end. `npm run bench` builds it first. */
const MAIN = fileURLToPath(new URL('../../.build/cli/main.js', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'trialpiece-bench-'));

function run(...words: readonly string[]): void {
  const { status, stderr } = spawnSync(process.execPath, [MAIN, ...words], { cwd: folder, encoding: 'utf8' });
  if (status !== 0) throw new Error(`trialpiece ${words.join(' ')} ended with ${String(status)}: ${stderr}`);
}

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('whole process', () => {
  const few = { iterations: 5, warmupIterations: 1, time: 0, warmupTime: 0 };
  bench('list: start-up alone', () => run('list'), few);
  bench('show crosshead', () => run('show', 'crosshead'), few);
  bench('print crosshead --hand both', () => run('print', 'crosshead', '--hand', 'both'), few);
});
