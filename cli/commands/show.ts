import { describeParameters, describeRelations } from '../../engine/part/describe.js';
import type { Command } from '../command.js';
import { findPart } from '../find-part.js';
import { optionWord, positionalText } from '../option.js';
import { say } from '../output.js';
import { table } from '../table.js';

const command: Command = {
  name: 'show',
  takes: '<part>',
  summary: 'A part: its parameters, their kinds, defaults and limits, and what must hold between them',
  positionals: { part: { type: 'string', describe: 'name of a built-in part, or the path of a module' } },
  options: { units: { type: 'string', requiresArg: true, describe: 'in or mm, for the values of the relations' } },
  examples: [
    ['show crosshead', 'the parameters of the crosshead'],
    ['show ./my-part.ts --units mm', 'those of a part of your own, its relations in millimetres'],
  ],
  run: async (given) => {
    const units = optionWord(given, 'units', ['in', 'mm']);
    const generator = await findPart(positionalText(given, 'part'));
    const rows = describeParameters(generator).map(({ name, kind, default: usual, allowed, label }) => [name, kind, usual, allowed, label]);
    const relations = describeRelations(generator, units);
    say(`${generator.name}: ${generator.title}\n${generator.summary}\n\n`);
    say(table([['parameter', 'kind', 'default', 'limits', 'what it is'], ...rows]));
    if (relations.length > 0) say(`\nwhat must hold, with the values at the defaults\n${relations.map((line) => `${line}\n`).join('')}`);
  },
};

export default command;
