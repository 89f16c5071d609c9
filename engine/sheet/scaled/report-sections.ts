import type { Phrase } from '../../part/cut.js';
import { lineCells, lineHeadings, lineReasons } from '../../plan/scaled/in-words.js';
import type { ScaleReport } from '../../plan/scaled/report.js';
import { factorBlock, strengthBlock, workBlocks, type WordBlock } from '../../plan/scaled/sections-in-words.js';
import type { LengthUnit } from '../../units/length.js';
import type { PageSection } from '../pages/page-section.js';

/** The report of a scaled part for sheets of words and tables. */
export function reportSections(report: ScaleReport, unit: LengthUnit): readonly PageSection[] {
  const asked = report.lines.filter(({ decision }) => decision !== undefined);
  return [
    sectionOf(factorBlock(report), [0.12, 0.12, 0.16, 0.6]),
    {
      heading: asked.length === 0 ? 'Nothing needs a decision' : 'To be decided',
      lines: asked.length === 0 ? [] : [['Fix a choice with --set; it is kept in the file beside the job.']],
      ...(asked.length === 0
        ? {}
        : {
            table: {
              columns: [
                { heading: 'Parameter', share: 0.2 },
                { heading: 'What is to be decided', share: 0.58 },
                { heading: 'Decided', share: 0.22 },
              ],
              rows: asked.map(({ parameter, decision }) => ({ cells: [[parameter], [decision ?? ''], []] as readonly Phrase[] })),
              writing: true,
            },
          }),
    },
    {
      heading: `What became of each size, in ${unit}`,
      lines: [],
      table: {
        columns: [...lineHeadings(unit).map((heading, i) => ({ heading, share: [0.15, 0.11, 0.09, 0.13, 0.08, 0.07, 0.1][i]! })), { heading: 'why', share: 0.27 }],
        rows: report.lines.map((line) => ({ cells: [...lineCells(line, unit).map((cell): Phrase => [cell]), [lineReasons(line).join('; ')]] })),
      },
    },
    sectionOf(narrower(strengthBlock(report, unit)), [0.25, 0.1, 0.16, 0.08, 0.16, 0.08, 0.09, 0.08]),
    ...workBlocks(report, unit).map((block) => sectionOf(block)),
    { heading: 'Cautions', lines: report.cautions.map((line): Phrase => [line]) },
  ];
}

/** A sheet is narrower than a screen: of the strength it shows both sizes, what changed, and the verdict. */
function narrower(block: WordBlock): WordBlock {
  const shown = ['what', 'loaded by', 'before', 'chosen', 'exact %', 'chosen %', 'verdict'];
  const at = shown.map((heading) => block.columns.indexOf(heading));
  const [times, timesNow] = [3, 6];
  const pick = (row: readonly string[]): readonly string[] => [row[at[0]!]!, row[at[1]!]!, row[at[2]!]!, row[times]!, row[at[3]!]!, row[timesNow]!, `${row[at[4]!]!} / ${row[at[5]!]!}`, row[at[6]!]!];
  return { ...block, columns: ['what', 'by', 'before', 'times', 'chosen', 'times', 'change %, exact / chosen', 'verdict'], rows: block.rows.map(pick) };
}

function sectionOf({ heading, sentences, columns, rows }: WordBlock, shares?: readonly number[]): PageSection {
  const table = { columns: columns.map((name, i) => ({ heading: name, share: shares?.[i] ?? 1 / columns.length })), rows: rows.map((cells) => ({ cells: cells.map((cell): Phrase => [cell]) })) };
  return { heading, lines: sentences.map((line): Phrase => [line]), ...(rows.length === 0 ? {} : { table }) };
}
