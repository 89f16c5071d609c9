import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const author = fileURLToPath(new URL('engine/part/author/index.ts', import.meta.url));

/** Tests that run the compiled program; the rest run the TypeScript as it stands. */
const COMPILED = ['tests/cli/**/*.test.ts'];

export default defineConfig({
  resolve: { alias: { trialpiece: author } },
  test: {
    testTimeout: 60_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
    reporters: ['default', './tests/support/closing-line.ts'],
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
    projects: [
      {
        extends: true,
        test: { name: 'engine', include: ['tests/**/*.test.ts'], exclude: COMPILED },
      },
      {
        extends: true,
        test: { name: 'compiled', include: COMPILED, globalSetup: ['tests/support/build.ts'] },
      },
    ],
  },
});
