/** Rows as lines with the columns set even, two spaces between; the last column runs free. */
export function table(rows: readonly (readonly string[])[]): string {
  const widths: number[] = [];
  for (const row of rows) row.forEach((cell, column) => (widths[column] = Math.max(widths[column] ?? 0, cell.length)));
  return rows
    .map((row) => row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ').trimEnd())
    .map((line) => `${line}\n`)
    .join('');
}
