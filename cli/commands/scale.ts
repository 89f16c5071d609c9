import { seriesAsked, seriesNames } from '../../engine/part/scaling/series.js';
import { UserError } from '../../engine/units/user-error.js';
import type { Command } from '../command.js';
import { findPart } from '../find-part.js';
import { optionText, optionWord, positionalText } from '../option.js';
import { say } from '../output.js';
import { printAsked, printOptions, printPositionals } from '../print-options.js';
import { recordText } from '../print-part.js';
import { fixedInWords } from '../scale-file.js';
import { keepScaleFile, scaleReportOf, writeScaled } from '../scale-part.js';

const { hand, set, units, brackets, paper, angle, shop, format, out } = printOptions;

const command: Command = {
  name: 'scale',
  takes: '<part>',
  summary: 'A part for another gauge: every size by its own rule, strength worked out again, what is to be decided on top',
  positionals: printPositionals,
  options: {
    to: { type: 'string', requiresArg: true, describe: 'a gauge (7.25 in), a scale (1-1/2 in/ft) or a factor (1.45)' },
    from: { type: 'string', requiresArg: true, describe: 'the gauge or scale that the part is for (usual: as the part says)' },
    series: { type: 'string', requiresArg: true, describe: `series of all threads: ${seriesNames.join(', ')} (usual: each its own)` },
    report: { type: 'string', requiresArg: true, describe: 'json, table or sheet alone (usual: the table, and prints and report as sheets)' },
    hand, set, units, brackets, paper, angle, shop, format, out,
  },
  examples: [
    ['scale crosshead --to "7.25 in"', 'prints for the larger engine, and what became of every size'],
    ['scale crosshead --to "7.25 in" --series metric --report table', 'metric threads, the report alone'],
    ['scale crosshead --to "7.25 in" --set padThread=2-56', 'a choice of your own, which is kept for this part and gauge'],
    ['scale connecting-rod --to "3.5 in" --report json', 'downwards, as JSON'],
  ],
  epilogue: 'What is set, --from and --series are kept in <part>-<gauge>.scale.yaml in this folder, and read again here and by --gauge of the other commands: pack <part> --gauge makes the whole bench pack.',
  run: async (given) => {
    const to = optionText(given, 'to');
    if (to === undefined) throw new UserError('scale needs --to, a gauge, a scale or a factor, as in trialpiece scale crosshead --to "7.25 in".');
    const report = optionWord(given, 'report', ['json', 'table', 'sheet']);
    const series = optionText(given, 'series');
    const { choices, formats, folder } = await printAsked(given);
    const generator = await findPart(positionalText(given, 'part'));
    const made = await scaleReportOf(generator, choices, { to, from: optionText(given, 'from'), series: series === undefined ? undefined : seriesAsked(series) });
    if (report === 'json') say(recordText(made.report));
    if (report === undefined || report === 'table') {
      const { scaleTable } = await import('../scale-table.js');
      say(scaleTable(made.report, made.unit, fixedInWords(made.job.file, made.job.kept)));
    }
    const kept = await keepScaleFile(made.job, to);
    if (report === 'json' || report === 'table') return 0;
    if (report === undefined) say('\n');
    const { paths, leftOut } = await writeScaled(made, choices, formats, folder, report === undefined);
    for (const path of [...(kept === undefined ? [] : [kept]), ...paths]) say(`${path}\n`);
    for (const sentence of leftOut) say(`left out: ${sentence}\n`);
    return 0;
  },
};

export default command;
