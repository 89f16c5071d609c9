import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** A row of a published table by column; a column that does not exist throws, so that a misspelt test fails. */
export interface PublishedRow {
  readonly text: (column: string) => string;
  readonly number: (column: string) => number;
  readonly sure: boolean;
}

function cells(line: string): readonly string[] {
  const found: string[] = [];
  for (const match of line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)) found.push(match[1]?.replaceAll('""', '"') ?? match[2] ?? '');
  return found;
}

/** The rows of a table of this folder. */
export function published(name: string): readonly PublishedRow[] {
  const path = fileURLToPath(new URL(`${name}.csv`, import.meta.url));
  const [head = '', ...lines] = readFileSync(path, 'utf8').trim().split(/\r?\n/);
  const columns = cells(head);
  return lines.map((line) => {
    const values = cells(line);
    const text = (column: string): string => {
      const value = values[columns.indexOf(column)];
      if (value === undefined) throw new RangeError(`${name} has no column ${column}`);
      return value;
    };
    return { text, number: (column) => (text(column) === '' ? Number.NaN : Number(text(column))), sure: !text('how').includes('memory-unsure') };
  });
}
