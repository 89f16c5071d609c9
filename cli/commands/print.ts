import type { Command } from '../command.js';
import { findPart } from '../find-part.js';
import { positionalText } from '../option.js';
import { say } from '../output.js';
import { printAsked, printOptions, printPositionals } from '../print-options.js';
import { printPart, recordText } from '../print-part.js';
import { writeFiles } from '../write-files.js';

const command: Command = {
  name: 'print',
  takes: '<part>',
  summary: "A part's shop print, true to scale, as SVG and PDF with its record in JSON",
  positionals: printPositionals,
  options: printOptions,
  examples: [
    ['print crosshead', 'its right hand, in the folder out'],
    ['print crosshead --hand both --paper A4', 'both hands, on A4'],
    ['print crosshead --set bore="5/16 in"', 'one size changed'],
    ['print crosshead --shop shop.yaml', 'speeds and settings for your own machines'],
    ['print ./my-part.ts --record', 'the record of a part of your own'],
  ],
  run: async (given) => {
    const { choices, formats, folder, recordOnly } = await printAsked(given);
    const prints = await printPart(await findPart(positionalText(given, 'part')), choices, recordOnly ? [] : formats);
    if (recordOnly) {
      const records = prints.map(({ record }) => record);
      say(recordText(choices.hand === 'both' ? records : records[0]));
      return;
    }
    for (const path of await writeFiles(folder, prints.flatMap(({ files }) => files))) say(`${path}\n`);
  },
};

export default command;
