import { describe, expect, it } from 'vitest';
import { columns } from '../../engine/trade/tables/columns.js';
import { rowInWords, rowsInWords } from '../../engine/trade/tables/in-words.js';
import { findTable, tables, type TableRow } from '../../engine/trade/tables/index.js';

const keysOf = (row: TableRow): readonly string[] =>
  Object.entries(row).flatMap(([key, value]) => (typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.keys(value).map((part) => `${key}.${part}`) : [key]));

const rowsOf = (name: string, filter?: string): readonly TableRow[] => {
  const answer = findTable(name).find(filter);
  return answer.kind === 'row' ? [answer.row] : answer.rows;
};

describe('every table', () => {
  it.each(tables.map((table) => [table.name, table] as const))('%s has a heading for each column, and a cell in each place of each block', (_, table) => {
    for (const row of table.rows) for (const key of keysOf(row)) expect(columns.has(key), `${row.name}: ${key}`).toBe(true);
    for (const unit of ['mm', 'in'] as const) {
      const blocks = rowsInWords(table.rows, unit);
      expect(blocks.reduce((sum, { rows }) => sum + rows.length, 0)).toBe(table.rows.length);
      for (const { headings, numeric, rows, sources } of blocks) {
        expect(numeric).toHaveLength(headings.length);
        expect(sources.length).toBeGreaterThan(0);
        for (const row of rows) {
          expect(row).toHaveLength(headings.length);
          expect(row.join(' ')).not.toMatch(/NaN|undefined|\[object/);
        }
      }
    }
  });
});

describe('a column', () => {
  const block = (name: string, filter: string, unit: 'mm' | 'in') => rowsInWords(rowsOf(name, filter), unit)[0];

  it('has the decimals that its values need', () => {
    // BS 93: 0 BA 6.0 mm, 16 BA 0.79 mm.
    expect(block('threads', 'ba', 'mm')?.rows.map((row) => row[2]).filter((_, index) => index === 0 || index === 16)).toEqual(['6.00', '0.79']);
    expect(block('threads', 'ba', 'in')?.rows[0]?.[2]).toBe('.2362');
  });

  it('of deviations has signs, micrometres in mm and inches in in', () => {
    // ISO 286-2: js6 at 10 to 18 mm is +-5.5.
    const at = (unit: 'mm' | 'in') => block('fits', 'js6', unit)?.rows.find((row) => Number(row[2]) === (unit === 'mm' ? 18 : 0.7087))?.slice(-2);
    expect(at('mm')).toEqual(['+5.5', '-5.5']);
    expect(at('in')).toEqual(['+.00022', '-.00022']);
  });

  it('is left out where it holds nothing', () => expect(block('threads', 'ba', 'mm')?.headings).not.toContain('per inch'));
});

it('a row alone tells also what a list has no room for', () => {
  const [row] = rowsOf('materials', 'brass');
  if (row === undefined) throw new Error('no brass');
  expect(rowInWords(row, 'mm')).toContainEqual(['also called', 'brass, CZ121, C36000, CW614N, 360 brass, CuZn39Pb3']);
});

it('a bronze without a name counts as the weaker one', () => {
  expect(rowsOf('materials', 'bronze')[0]?.name).toBe('bearing bronze');
  expect(rowsOf('materials', 'PB1')[0]?.name).toBe('bearing bronze');
});
