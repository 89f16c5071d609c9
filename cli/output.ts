/**
 * What the program itself writes to standard output. A part of the user's own is code of the user's own, and what that
 * writes would stand amid a record that another program reads: `keepOutput` sends it to standard error.
 */
const write = process.stdout.write.bind(process.stdout);

export const say = (text: string): boolean => write(text);

/** From now on only `say` writes to standard output. */
export function keepOutput(): void {
  process.stdout.write = process.stderr.write.bind(process.stderr);
}
