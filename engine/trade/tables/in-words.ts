import { formatDeviation, formatLength } from '../../units/format.js';
import type { LengthUnit } from '../../units/length.js';
import { roundTo } from '../../units/rounding.js';
import type { Json } from '../sums/sum.js';
import { columns, onlyInRow, type Column } from './columns.js';
import type { TableRow } from './table.js';

/** Rows that have the same columns, as text. Each cell of a number has the decimals of its column. */
export interface TextBlock {
  /** The kind of thing, where the table has several. */
  readonly title?: string;
  readonly headings: readonly string[];
  /** For each column whether it holds numbers, which stand to the right. */
  readonly numeric: readonly boolean[];
  readonly rows: readonly (readonly string[])[];
  /** Each source once; where there are several the last column gives the number of the row's own, from 1. */
  readonly sources: readonly string[];
}

type Flat = ReadonlyMap<string, Json>;

/** The values of a row by column, groups taken apart: "minorInternal.min". */
function flatten(row: TableRow): Flat {
  const flat = new Map<string, Json>();
  for (const [key, value] of Object.entries(row)) {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) flat.set(key, value);
    else for (const [part, inner] of Object.entries(value)) flat.set(`${key}.${part}`, inner as Json);
  }
  return flat;
}

const columnOf = (key: string): Column => columns.get(key) ?? { heading: key, kind: 'text' };

/** The fewest decimals, up to `most`, that show every value of a column as fully as that. */
function decimalsFor(values: readonly number[], most: number): number {
  for (let decimals = 0; decimals < most; decimals += 1) if (values.every((value) => roundTo(value, decimals) === roundTo(value, most))) return decimals;
  return most;
}

const scaled = (value: number, { kind }: Column, unit: LengthUnit): number => (kind === 'micrometres' && unit === 'in' ? value / 1000 : value);

/** Text of each value of a column; blank where there is none. */
function cells(column: Column, values: readonly Json[], unit: LengthUnit): readonly string[] {
  const numbers = values.filter((value) => typeof value === 'number').map((value) => scaled(value, column, unit));
  const inUnit = unit === 'in' ? numbers.map((value) => value / 25.4) : numbers;
  const lengthDecimals = decimalsFor(inUnit, column.kind === 'length' ? 4 : 5);
  const plainDecimals = decimalsFor(numbers, 3);
  return values.map((value) => {
    if (value === null) return '';
    if (Array.isArray(value)) return value.map(String).join(typeof value[0] === 'number' ? ' to ' : ', ');
    if (typeof value !== 'number') return typeof value === 'object' ? '' : String(value);
    const mm = scaled(value, column, unit);
    if (column.kind === 'length') return formatLength(mm, unit, lengthDecimals);
    if (column.kind === 'deviation' || (column.kind === 'micrometres' && unit === 'in')) return formatDeviation(mm, unit, lengthDecimals);
    return column.kind === 'micrometres' ? formatDeviation(mm, 'mm', plainDecimals) : roundTo(mm, plainDecimals).toFixed(plainDecimals);
  });
}

function unitOf({ kind }: Column, unit: LengthUnit): string {
  if (kind === 'micrometres' && unit === 'mm') return ' um';
  return kind === 'length' || kind === 'deviation' || kind === 'micrometres' ? ` ${unit}` : '';
}

function block(rows: readonly TableRow[], unit: LengthUnit, title: string | undefined): TextBlock {
  const flats = rows.map(flatten);
  const keys = [...new Set(flats.flatMap((flat) => [...flat.keys()]))].filter(
    (key) => columnOf(key).kind !== 'hidden' && !onlyInRow.has(key) && flats.some((flat) => (flat.get(key) ?? null) !== null),
  );
  const sources = [...new Set(rows.map(({ source }) => source))];
  const texts = keys.map((key) => cells(columnOf(key), flats.map((flat) => flat.get(key) ?? null), unit));
  if (sources.length > 1) texts.push(rows.map(({ source }) => String(sources.indexOf(source) + 1)));
  return {
    ...(title === undefined ? {} : { title }),
    headings: [...keys.map((key) => columnOf(key).heading + unitOf(columnOf(key), unit)), ...(sources.length > 1 ? ['source'] : [])],
    numeric: [...keys.map((key) => columnOf(key).kind !== 'text'), ...(sources.length > 1 ? [true] : [])],
    rows: rows.map((_, index) => texts.map((column) => column[index] ?? '')),
    sources,
  };
}

const kindOf = (row: TableRow): string | undefined => (typeof row['kind'] === 'string' ? row['kind'] : undefined);

/** Rows as text, lengths in `unit`; rows of another kind or with other numbers make another block. */
export function rowsInWords(rows: readonly TableRow[], unit: LengthUnit): readonly TextBlock[] {
  const groups = new Map<string, TableRow[]>();
  for (const row of rows) {
    const key = [kindOf(row) ?? '', ...Object.keys(row).filter((name) => columnOf(name).kind !== 'text')].join('|');
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()].map((group) => block(group, unit, group[0] === undefined ? undefined : kindOf(group[0])));
}

/** One row as pairs of what and value, lengths in `unit`; limits of classes a line each. */
export function rowInWords(row: TableRow, unit: LengthUnit): readonly (readonly [what: string, value: string])[] {
  const lines = [...flatten(row)]
    .filter(([key, value]) => key !== 'name' && columnOf(key).kind !== 'hidden' && value !== null)
    .map(([key, value]): [string, string] => [columnOf(key).heading, (cells(columnOf(key), [value], unit)[0] ?? '') + unitOf(columnOf(key), unit)]);
  const limits = Array.isArray(row['classes']) ? (row['classes'] as readonly { readonly name: string; readonly of: string; readonly min: number; readonly max: number }[]) : [];
  const length = (mm: number): string => formatLength(mm, unit, 4);
  return [...lines, ...limits.map(({ name, of, min, max }): [string, string] => [`${name} ${of.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)}`, `${length(min)} to ${length(max)} ${unit}`])];
}
