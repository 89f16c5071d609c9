import type { Phrase } from '../../part/cut.js';
import type { ScaleLine } from '../../part/scaling/index.js';
import { lineCells, lineReasons } from '../../plan/scaled/in-words.js';
import type { ScaleReport } from '../../plan/scaled/report.js';
import { factorBlock, strengthBlock, workBlocks, type WordBlock } from '../../plan/scaled/sections-in-words.js';
import type { LengthUnit } from '../../units/length.js';
import type { PageSection } from '../pages/page-section.js';

/** The report of a scaled part for sheets of words and tables. */
export function reportSections(report: ScaleReport, unit: LengthUnit): readonly PageSection[] {
  const plain = report.lines.filter(isPlain);
  const special = report.lines.filter((line) => !isPlain(line));
  return [
    sectionOf(factorBlock(report), [0.11, 0.14, 0.2, 0.55]),
    asksSection(report),
    {
      heading: 'Sizes with a rule of their own',
      lines: [[`Lengths in ${unit === 'in' ? 'inches, departures from exact scaling in thousandths' : 'mm, departures from exact scaling in hundredths'} and per cent.`]],
      table: {
        columns: ['parameter', 'before', 'exact', 'chosen', 'off', 'why'].map((heading, i) => ({ heading, share: [0.21, 0.12, 0.12, 0.12, 0.14, 0.29][i]! })),
        rows: special.map((line) => ({ cells: specialCells(line, unit) })),
      },
    },
    {
      heading: 'Sizes that grow with the part',
      lines: [],
      table: {
        columns: ['parameter', 'what it is', 'before', 'now'].map((heading, i) => ({ heading, share: [0.24, 0.46, 0.15, 0.15][i]! })),
        rows: plain.map((line) => {
          const [name, before, , chosen] = lineCells(line, unit);
          return { cells: [[name ?? ''], [line.label], [before ?? ''], [chosen ?? '']] };
        }),
      },
    },
    sectionOf(narrower(strengthBlock(report)), [0.21, 0.1, 0.15, 0.085, 0.15, 0.085, 0.11, 0.11]),
    ...workBlocks(report, unit).map((block) => sectionOf(block, sharesOf[block.heading])),
    { heading: 'Cautions', lines: report.cautions.map((line): Phrase => [line]) },
  ];
}

/** Of tables whose columns hold things of unlike length. */
const sharesOf: Readonly<Partial<Record<string, readonly number[]>>> = {
  Machines: [0.1, 0.16, 0.2, 0.15, 0.15, 0.14, 0.1],
  Taps: [0.08, 0.24, 0.1, 0.24, 0.1, 0.24],
  'Test pieces': [0.08, 0.3, 0.12, 0.1, 0.12, 0.1, 0.18],
  Fixtures: [0.1, 0.33, 0.33, 0.24],
  'To get beside': [0.3, 0.7],
  Fits: [0.26, 0.1, 0.14, 0.18, 0.14, 0.18],
};

const isPlain = (line: ScaleLine): boolean => line.rule === 'length' && line.mended === undefined && line.deviation === 0;

function specialCells(line: ScaleLine, unit: LengthUnit): readonly Phrase[] {
  const [name, before, exact, chosen, off, percent, rule] = lineCells(line, unit);
  const departs = off === '0' ? '0' : `${off ?? ''} ${percent ?? ''}\u00a0%`;
  return [name, before, exact, chosen, departs, `${rule ?? ''}: ${lineReasons(line).join('; ')}`].map((cell): Phrase => [cell ?? '']);
}

function asksSection({ asks }: ScaleReport): PageSection {
  if (asks.length === 0) return { heading: 'Nothing needs a decision', lines: [] };
  return {
    heading: 'To be decided',
    lines: [['A size is fixed with --set; it is kept in the file beside the job.']],
    table: {
      columns: [
        { heading: 'About', share: 0.24 },
        { heading: 'What is to be decided', share: 0.54 },
        { heading: 'Decided', share: 0.22 },
      ],
      rows: asks.map(({ about, ask }) => ({ cells: [[about], [ask], []] as readonly Phrase[] })),
      writing: true,
    },
  };
}

/** A sheet is narrower than a screen: of the strength it shows both sizes, what changed, and the verdict. */
function narrower(block: WordBlock): WordBlock {
  const shown = ['what', 'loaded by', 'before', 'chosen', 'exact %', 'chosen %', 'verdict'];
  const at = shown.map((heading) => block.columns.indexOf(heading));
  const [times, timesNow] = [3, 6];
  const pick = (row: readonly string[]): readonly string[] => [row[at[0]!]!, row[at[1]!]!, row[at[2]!]!, row[times]!, row[at[3]!]!, row[timesNow]!, `${row[at[4]!]!}, ${row[at[5]!]!}`, row[at[6]!]!];
  return { ...block, columns: ['what', 'by', 'before', 'times', 'chosen', 'times', 'exact, chosen %', 'verdict'], rows: block.rows.map(pick) };
}

function sectionOf({ heading, sentences, columns, rows }: WordBlock, shares?: readonly number[]): PageSection {
  const table = { columns: columns.map((name, i) => ({ heading: name, share: shares?.[i] ?? 1 / columns.length })), rows: rows.map((cells) => ({ cells: cells.map((cell): Phrase => [cell]) })) };
  return { heading, lines: sentences.map((line): Phrase => [line]), ...(rows.length === 0 ? {} : { table }) };
}
