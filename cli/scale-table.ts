import { lineCells, lineHeadings, lineReasons } from '../engine/plan/scaled/in-words.js';
import type { ScaleReport } from '../engine/plan/scaled/report.js';
import { factorBlock, strengthBlock, workBlocks, type WordBlock } from '../engine/plan/scaled/sections-in-words.js';
import type { LengthUnit } from '../engine/units/length.js';
import { table } from './table.js';

/**
 * The report as it is read on a screen.
 * @param fixed what a person has fixed, in a sentence.
 */
export function scaleTable(report: ScaleReport, unit: LengthUnit, fixed?: string): string {
  const { asks } = report;
  const numbers = [false, false, false, false, true, true, false, false];
  const rows = report.lines.map((line) => [...lineCells(line, unit), lineReasons(line).join('; ')]);
  return [
    blockText(factorBlock(report)),
    ...(fixed === undefined ? [] : [`${fixed}\n`]),
    asks.length === 0 ? 'Nothing needs a decision.\n' : `To be decided; a size is fixed with --set\n${asks.map(({ about, ask }) => `  ${about}: ${ask}\n`).join('')}`,
    `Parameters, lengths in ${unit}\n${table([[...lineHeadings(unit), 'why'], ...rows], numbers)}`,
    ...[strengthBlock(report), ...workBlocks(report, unit)].map(blockText),
    `Cautions\n${report.cautions.map((line) => `  ${line}\n`).join('')}`,
  ].join('\n');
}

const blockText = ({ heading, sentences, columns, rows }: WordBlock): string =>
  `${heading}\n${sentences.map((line) => `  ${line}\n`).join('')}${rows.length === 0 ? '' : table([columns, ...rows])}`;
