import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** Compiles the program before the tests that run it, so that they never see an old one. */
export default function build(): void {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const compiler = fileURLToPath(new URL('../../node_modules/typescript/bin/tsc', import.meta.url));
  try {
    execFileSync(process.execPath, [compiler, '-p', 'tsconfig.build.json'], { cwd: root, encoding: 'utf8', stdio: 'pipe' });
  } catch (error) {
    throw new Error(`The program does not compile:\n${String((error as { stdout?: string }).stdout)}`);
  }
}
