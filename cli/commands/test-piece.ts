import type { Command } from '../command.js';
import { optionCount, optionNumbers } from '../count-option.js';
import { findPart } from '../find-part.js';
import { optionText, positionalText } from '../option.js';
import { say } from '../output.js';
import { printAsked, printOptions, printPositionals } from '../print-options.js';
import { filesOf, recordText } from '../print-part.js';
import { printTestPiece } from '../test-piece-of-part.js';
import { writeFiles } from '../write-files.js';

/** More trials than this are no rehearsal. */
const mostTrials = 12;

const command: Command = {
  name: 'test-piece',
  takes: '<part>',
  summary: "The print of a part's test piece, on which its risky cuts are rehearsed",
  positionals: printPositionals,
  options: {
    ...printOptions,
    rehearse: { type: 'string', requiresArg: true, describe: 'numbers of the operations to rehearse, as 90,100 (usual: those that the stakes call for)' },
    material: { type: 'string', requiresArg: true, describe: 'what the piece is made of (usual: free-cutting mild steel)' },
    trials: { type: 'string', requiresArg: true, describe: `how many trials one bar is for, 1 (usual) to ${mostTrials}` },
  },
  examples: [
    ['test-piece crosshead', 'for the operations that are worth it'],
    ['test-piece crosshead --rehearse 170 --trials 3', 'one operation, three trials on one bar'],
    ['test-piece crosshead --material brass', 'from what lies in the drawer'],
    ['test-piece ./my-part.ts --record', 'the record of a piece for a part of your own'],
  ],
  run: async (given) => {
    const rehearse = optionNumbers(given, 'rehearse', 'operations');
    const trials = optionCount(given, 'trials', 1, mostTrials);
    const { choices, formats, folder, recordOnly } = await printAsked(given);
    const prints = await printTestPiece(await findPart(positionalText(given, 'part')), choices, { rehearse, trials, material: optionText(given, 'material') });
    if (recordOnly) {
      const records = prints.map(({ record }) => record);
      say(recordText(choices.hand === 'both' ? records : records[0]));
      return 0;
    }
    for (const path of await writeFiles(folder, await filesOf(prints, formats))) say(`${path}\n`);
    return 0;
  },
};

export default command;
