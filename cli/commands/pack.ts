import type { Command } from '../command.js';
import { findPart } from '../find-part.js';
import { optionText, positionalText } from '../option.js';
import { say } from '../output.js';
import { packPart } from '../pack-of-part.js';
import { printAsked, printOptions, printPositionals } from '../print-options.js';
import { filesOf, recordText } from '../print-part.js';
import { writeFiles } from '../write-files.js';

const command: Command = {
  name: 'pack',
  takes: '<part>',
  summary: "A part's bench pack: prints, plans, test piece, fixtures and a sheet for measured values in one PDF",
  positionals: printPositionals,
  options: {
    ...printOptions,
    hand: { ...printOptions.hand, describe: 'right, left or both (usual)' },
    format: { ...printOptions.format, describe: 'pdf (usual), svg or both with a comma' },
    record: { ...printOptions.record, describe: 'write only the JSON record, to standard output' },
  },
  examples: [
    ['pack crosshead', 'everything for the bench, both hands'],
    ['pack crosshead --hand left --paper A4 --shop shop.yaml', 'the left hand, for your own machines'],
  ],
  run: async (given) => {
    const asked = await printAsked(given);
    const choices = optionText(given, 'hand') === undefined ? { ...asked.choices, hand: 'both' as const } : asked.choices;
    const formats = optionText(given, 'format') === undefined ? (['pdf'] as const) : asked.formats;
    const pack = await packPart(await findPart(positionalText(given, 'part')), choices);
    if (asked.recordOnly) {
      say(recordText(pack.record));
      return 0;
    }
    for (const path of await writeFiles(asked.folder, await filesOf([pack], formats))) say(`${path}\n`);
    return 0;
  },
};

export default command;
