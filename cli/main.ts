#!/usr/bin/env node
import { run } from './run.js';

// A part of the user's own may not end the program, so its call is taken away then.
const exit = process.exit.bind(process);

// A reader that has seen enough (as `head` does) closes the pipe: that is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  exit(0);
});

process.exitCode = await run(process.argv.slice(2));
