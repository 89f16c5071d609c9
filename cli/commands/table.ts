import type { TextBlock } from '../../engine/trade/tables/in-words.js';
import { UserError } from '../../engine/units/user-error.js';
import type { Command } from '../command.js';
import { optionFlag, optionWord, positionalText, positionalWords } from '../option.js';
import { table } from '../table.js';

const command: Command = {
  name: 'table',
  takes: '<table> [row..]',
  summary: 'A table of the trade: threads, drills, reamers, centre-drills, fits, materials, stock, gauges, screws, tempering',
  positionals: {
    table: { type: 'string', describe: 'its name' },
    row: { type: 'string', describe: 'a row by its name, or words that pick rows; quote # and "' },
  },
  options: {
    units: { type: 'string', requiresArg: true, describe: 'in or mm, for the lengths shown (usual: mm)' },
    json: { type: 'boolean', describe: 'as JSON: lengths in mm, angles in degrees, other units in the names; a row by its name is an object, all else a list' },
  },
  examples: [
    ['table threads 0-80', 'one thread, with the limits of its classes'],
    ['table threads ba --units in', 'a series, in inches'],
    ['table drills "#53" --json', 'one drill, as JSON'],
    ['table fits H7/g6', 'the limits of a fit at each step of size'],
    ['table materials silver steel', 'one material'],
    ['table stock hexagon bar', 'sizes as sold'],
    ['table screws countersunk M3', 'heads'],
  ],
  run: async (given) => {
    const units = optionWord(given, 'units', ['in', 'mm']) ?? 'mm';
    const asJson = optionFlag(given, 'json');
    const { findTable } = await import('../../engine/trade/tables/index.js');
    const asked = findTable(positionalText(given, 'table'));
    const answer = asked.find(filterOf(positionalWords(given, 'row')));
    if (asJson) {
      process.stdout.write(`${JSON.stringify(answer.kind === 'row' ? answer.row : answer.rows, null, 2)}\n`);
      return;
    }
    const { rowInWords, rowsInWords } = await import('../../engine/trade/tables/in-words.js');
    if (answer.kind === 'row') {
      process.stdout.write(`${answer.row.name}\n\n${table(rowInWords(answer.row, units))}\nSource: ${answer.row.source}\n`);
      return;
    }
    process.stdout.write(`${asked.name}: ${asked.summary}\n`);
    for (const block of rowsInWords(answer.rows, units)) process.stdout.write(blockText(block));
  },
};

function filterOf(words: readonly string[]): string | undefined {
  const filter = words.join(' ').trim();
  if (words.length > 0 && filter === '') throw new UserError('The row is empty: name a row, or leave it out for the whole table.');
  return words.length === 0 ? undefined : filter;
}

function blockText({ title, headings, numeric, rows, sources }: TextBlock): string {
  const [only] = sources;
  const named = sources.length === 1 ? `Source: ${only ?? ''}\n` : sources.map((source, index) => `Source ${String(index + 1)}: ${source}\n`).join('');
  return `\n${title === undefined ? '' : `${title}\n`}${table([headings, ...rows], numeric)}\n${named}`;
}

export default command;
