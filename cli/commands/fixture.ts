import type { Command } from '../command.js';
import { optionCount } from '../count-option.js';
import { findPart } from '../find-part.js';
import type { PrintedFixtures } from '../threads/fixture-job.js';
import { fixturesOfPart } from '../fixture-of-part.js';
import { optionFlag, optionText, positionalText } from '../option.js';
import { say } from '../output.js';
import { printAsked, printOptions, printPositionals } from '../print-options.js';
import { recordText } from '../print-files.js';
import { writeFiles } from '../write-files.js';

/** Exit status where a fixture spoils the part, or the cutter. */
const FATAL = 1;
const largestNumber = 999_999;

const command: Command = {
  name: 'fixture',
  takes: '<part>',
  summary: 'What holds, locates, guides and checks a part: each piece dimensioned, with its assembly and use',
  positionals: printPositionals,
  options: {
    ...printOptions,
    operation: { type: 'string', requiresArg: true, describe: 'number of the operation to make one for (usual: a set for the whole part)' },
    kind: { type: 'string', requiresArg: true, describe: 'which kind, with --operation; list fixtures tells the kinds (usual: the one that is picked)' },
    record: { ...printOptions.record, describe: 'write only the JSON record, to standard output; for a set a list, that of the set first' },
    check: { type: 'boolean', describe: 'tell what was found, a line each, and exit with 1 where something is fatal' },
  },
  examples: [
    ['fixture crosshead', 'a set for all its set-ups'],
    ['fixture crosshead --operation 90', 'the one that is picked for an operation'],
    ['fixture crosshead-pin --operation 100 --kind split-bush', 'of a kind of your choice'],
    ['fixture ./my-part.ts --check', 'whether the fixtures of a part of your own hold'],
  ],
  epilogue: 'Pictures of the whole are drawn to no scale; --scale is that of the pieces.',
  run: async (given) => {
    const operation = optionCount(given, 'operation', 1, largestNumber);
    const kind = optionText(given, 'kind')?.toLowerCase();
    const { choices, formats, folder, recordOnly } = await printAsked(given);
    const documents = await fixturesOfPart(await findPart(positionalText(given, 'part')), choices, { operation, kind }, recordOnly ? [] : formats);
    const check = optionFlag(given, 'check');
    if (recordOnly) {
      const records = documents.map(({ record }) => record);
      say(recordText(operation === undefined || choices.hand === 'both' ? records : records[0]));
    } else {
      for (const path of await writeFiles(folder, documents.flatMap(({ files }) => files))) say(`${path}\n`);
      if (check) for (const line of findingLines(documents)) say(`${line}\n`);
    }
    return check && findingsIn(documents).some(({ gravity }) => gravity === 'fatal') ? FATAL : 0;
  },
};

const findingsIn = (documents: readonly PrintedFixtures[]) =>
  documents.flatMap(({ record }) => ('findings' in record ? record.findings.map((finding) => ({ ...finding, title: record.title, hand: record.hand })) : []));

/** What was found, a line each, the worst first, with the fixture that it was found of. */
function findingLines(documents: readonly PrintedFixtures[]): readonly string[] {
  const found = findingsIn(documents);
  const hands = new Set(documents.map(({ record }) => record.hand));
  const lines = (['fatal', 'warning', 'remark'] as const).flatMap((wanted) =>
    found.filter(({ gravity }) => gravity === wanted).map(({ title, hand, operation, sentence }) => `${wanted}: ${title}${hands.size > 1 ? `, ${hand} hand` : ''}, operation ${operation}: ${sentence}`),
  );
  return lines.length === 0 ? ['Nothing was found amiss.'] : lines;
}

export default command;
