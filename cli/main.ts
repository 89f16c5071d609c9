#!/usr/bin/env node
import { run } from './run.js';

// A reader that has seen enough (as `head` does) closes the pipe: that is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

process.exitCode = await run(process.argv.slice(2));
