import type { Sum } from '../engine/trade/sums/index.js';
import { table } from './table.js';

/** A sum as it would stand on paper: what was given, what was taken as usual, the working, the source. */
export function workingText({ name, summary, source, arguments: all }: Sum, given: ReadonlyMap<string, string>, steps: readonly string[]): string {
  const rows = all.flatMap((argument): readonly (readonly string[])[] => {
    const text = given.get(argument.name);
    if (text !== undefined) return [[`  ${argument.name}`, text]];
    return argument.default === undefined ? [] : [[`  ${argument.name}`, `${argument.default} (usual)`]];
  });
  return `${name}: ${summary}\n\nGiven\n${table(rows)}\nWorking\n${steps.map((step) => `  ${step}\n`).join('')}\nSource: ${source}\n`;
}
