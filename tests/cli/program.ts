import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const MAIN = fileURLToPath(new URL('../../.build/cli/main.js', import.meta.url));

/** The built-in parts, as a refusal names them. */
export const PARTS = 'connecting-rod, crosshead, crosshead-pin, expansion-link, gland-nut, valve-rod-fork';

export interface Outcome {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the compiled program in `folder` as a user would. */
export function trialpiece(folder: string, ...words: readonly string[]): Outcome {
  const { status, stdout, stderr } = spawnSync(process.execPath, [MAIN, ...words], {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
    env: { ...process.env, LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8' },
  });
  return { status, stdout, stderr };
}

/** A folder outside the checkout with the given files in it, removed after `use`. */
export async function inFolder(files: Readonly<Record<string, string>>, use: (folder: string) => void | Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'trialpiece-'));
  try {
    for (const [name, text] of Object.entries(files)) {
      mkdirSync(join(folder, name, '..'), { recursive: true });
      writeFileSync(join(folder, name), text);
    }
    await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Every file and folder below `folder`, sorted. */
export const everythingIn = (folder: string): readonly string[] => (readdirSync(folder, { recursive: true }) as string[]).sort();
