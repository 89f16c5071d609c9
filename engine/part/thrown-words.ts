/** What was thrown, in one line without a stop at its end: a module of the user may throw anything. */
export function thrownWords(thrown: unknown): string {
  try {
    const lines = (thrown instanceof Error ? thrown.message : String(thrown)).split('\n').map((line) => line.trim());
    const first = lines.find((line) => line !== '') ?? '';
    if (first !== '') return first.replace(/\.$/, '');
    return thrown instanceof Error ? `${thrown.name} without a message` : 'nothing';
  } catch {
    return 'something that cannot be written as text';
  }
}
