import type { Command } from '../command.js';
import { optionCount, optionNumbers } from '../count-option.js';
import { findPart } from '../find-part.js';
import { UserError } from '../../engine/units/user-error.js';
import { optionFlag, optionText, positionalText } from '../option.js';
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
    trials: { type: 'string', requiresArg: true, describe: `how many trials one blank is for, 1 (usual) to ${mostTrials}: side by side where they are milled or drilled, else in turn` },
    ladder: { type: 'boolean', describe: 'the trials step through the sizes to try, each at its own place: drills for a tapped hole, depths for a countersink' },
  },
  examples: [
    ['test-piece crosshead', 'for the operations that are worth it'],
    ['test-piece crosshead --rehearse 170 --trials 3', 'one operation, three trials on one bar'],
    ['test-piece crosshead --rehearse 100 --ladder', 'three drills for its tapped holes, side by side'],
    ['test-piece crosshead --material brass', 'from what lies in the drawer'],
    ['test-piece ./my-part.ts --record', 'the record of a piece for a part of your own'],
  ],
  run: async (given) => {
    const rehearse = optionNumbers(given, 'rehearse', 'operations');
    const trials = optionCount(given, 'trials', 1, mostTrials);
    const ladder = optionFlag(given, 'ladder');
    if (ladder && trials !== undefined) throw new UserError('--ladder makes as many trials as there are sizes to try: leave --trials out.');
    const { choices, formats, folder, recordOnly } = await printAsked(given);
    const prints = await printTestPiece(await findPart(positionalText(given, 'part')), choices, { rehearse, trials, ladder, material: optionText(given, 'material') });
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
