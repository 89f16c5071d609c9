import { nearestClause } from '../../units/nearest-name.js';
import { UserError } from '../../units/user-error.js';
import type { Json } from '../sums/sum.js';

/** A row as JSON: sizes in mm, angles in degrees, other units in the names. */
export interface TableRow {
  readonly name: string;
  readonly source: string;
  readonly [column: string]: Json;
}

/** One row where a name was asked for, a list otherwise. */
export type TableAnswer = { readonly kind: 'row'; readonly row: TableRow } | { readonly kind: 'rows'; readonly rows: readonly TableRow[] };

export interface Table {
  readonly name: string;
  readonly summary: string;
  readonly rows: readonly TableRow[];
  /** @throws UserError where nothing answers to the filter. */
  readonly find: (filter?: string) => TableAnswer;
}

const keyOf = (text: string): string => text.toLowerCase().replace(/[\s#"_]+|\bno\.?/g, '');

/** The rows that a filter picks: those of that name, else those of which the name or a text column contains it. */
export function filterRows(table: string, rows: readonly TableRow[], filter: string | undefined): readonly TableRow[] {
  if (filter === undefined || filter.trim() === '') return rows;
  const wanted = keyOf(filter);
  const exact = rows.filter((row) => keyOf(row.name) === wanted);
  if (exact.length > 0) return exact;
  const words = filter.trim().toLowerCase().split(/\s+/);
  const texts = (row: TableRow): string => Object.entries(row).filter(([column, value]) => column !== 'source' && typeof value === 'string').map(([, value]) => String(value).toLowerCase()).join(' | ');
  const found = rows.filter((row) => words.every((word) => new RegExp(`(?<![\\w.])${word.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&').replace(/s$/, 's?')}(?![\\w.])`).test(texts(row))));
  if (found.length > 0) return found;
  const names = rows.flatMap((row) => [row.name, ...Object.entries(row).filter(([column, value]) => column !== 'source' && typeof value === 'string').map(([, value]) => String(value))]);
  throw new UserError(`table ${table} has no row "${filter.trim()}"${nearestClause(filter, names)}.`);
}

/** A table that answers with a list, whatever is asked. */
export const listTable = (name: string, summary: string, rows: readonly TableRow[]): Table => ({
  name,
  summary,
  rows,
  find: (filter) => ({ kind: 'rows', rows: filterRows(name, rows, filter) }),
});
