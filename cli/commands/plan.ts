import type { MadePlan } from '../../engine/sheet/plan/make-plan.js';
import type { Command } from '../command.js';
import { findPart } from '../find-part.js';
import { optionFlag, positionalText } from '../option.js';
import { say } from '../output.js';
import { planPart } from '../plan-part.js';
import { printAsked, printOptions, printPositionals } from '../print-options.js';
import { filesOf, recordText } from '../print-part.js';
import { writeFiles } from '../write-files.js';

/** Exit status where the order of work spoils the part. */
const FATAL = 1;

const command: Command = {
  name: 'plan',
  takes: '<part>',
  summary: "A part's operation sheets: a picture of the work at every operation, with what its order was found to be",
  positionals: printPositionals,
  options: { ...printOptions, check: { type: 'boolean', describe: 'tell what was found, a line each, and exit with 1 where something is fatal' } },
  examples: [
    ['plan crosshead', 'its right hand, in the folder out'],
    ['plan crosshead --hand both --shop shop.yaml', 'both hands, for your own machines'],
    ['plan ./my-part.ts --check', 'whether the order of a part of your own holds'],
  ],
  epilogue: 'The pictures are drawn to no scale: --scale and --angle are read, and change nothing.',
  run: async (given) => {
    const { choices, formats, folder, recordOnly } = await printAsked(given);
    const plans = await planPart(await findPart(positionalText(given, 'part')), choices);
    const check = optionFlag(given, 'check');
    if (recordOnly) {
      const records = plans.map(({ record }) => record);
      say(recordText(choices.hand === 'both' ? records : records[0]));
    } else {
      for (const path of await writeFiles(folder, await filesOf(plans, formats))) say(`${path}\n`);
      if (check) for (const line of findingLines(plans)) say(`${line}\n`);
    }
    return check && plans.some(({ record }) => record.findings.some(({ gravity }) => gravity === 'fatal')) ? FATAL : 0;
  },
};

/** What was found, a line each, the worst first; the hand is named where the plans are of two. */
function findingLines(plans: readonly MadePlan[]): readonly string[] {
  const lines = (['fatal', 'warning', 'remark'] as const).flatMap((wanted) =>
    plans.flatMap(({ record: { hand, findings } }) =>
      findings.filter(({ gravity }) => gravity === wanted).map(({ operation, sentence }) => `${wanted}: ${plans.length > 1 ? `${hand} hand, ` : ''}operation ${operation}: ${sentence}`),
    ),
  );
  return lines.length === 0 ? ['Nothing was found amiss.'] : lines;
}

export default command;
