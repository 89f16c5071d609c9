import type { Command } from './command.js';
import { modulesIn } from './modules-in.js';

/** Every command in cli/commands: a new command is a new file there. */
export async function collectCommands(): Promise<readonly Command[]> {
  const modules = modulesIn(new URL('./commands/', import.meta.url));
  return Promise.all(modules.map(async ([, address]) => ((await import(address)) as { default: Command }).default));
}
