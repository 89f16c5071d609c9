/**
 * Rows as lines with the columns set even, two spaces between; the last column runs free.
 * @param toTheRight which columns are set to the right, as numbers are; none if not given.
 */
export function table(rows: readonly (readonly string[])[], toTheRight: readonly boolean[] = []): string {
  const widths: number[] = [];
  for (const row of rows) row.forEach((cell, column) => (widths[column] = Math.max(widths[column] ?? 0, cell.length)));
  const set = (cell: string, column: number): string => (toTheRight[column] === true ? cell.padStart(widths[column] ?? 0) : cell.padEnd(widths[column] ?? 0));
  return rows
    .map((row) => row.map(set).join('  ').trimEnd())
    .map((line) => `${line}\n`)
    .join('');
}
