import type { Command } from '../command.js';
import { lists } from '../lists.js';
import { positionalText, wordOf } from '../option.js';
import { table } from '../table.js';

const command: Command = {
  name: 'list',
  takes: '[what]',
  summary: 'What there is: parts, kinds of fixture, papers, threads, drills, stock',
  positionals: { what: { type: 'string', default: 'parts', describe: Object.keys(lists).join(', ') } },
  options: {},
  examples: [
    ['list', 'the built-in parts'],
    ['list threads', 'every thread that a part can ask for'],
  ],
  run: async (given) => {
    const what = wordOf(positionalText(given, 'what'), 'list', Object.keys(lists) as (keyof typeof lists)[]);
    process.stdout.write(table(await lists[what]()));
  },
};

export default command;
