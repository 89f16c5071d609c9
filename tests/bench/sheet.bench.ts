import { bench, describe } from 'vitest';
import { chooseDimensions } from '../../engine/sheet/dimension/choose.js';
import { axisProblem } from '../../engine/sheet/dimension/equations.js';
import { stationBook } from '../../engine/part/author/stations.js';
import type { MadePrint } from '../../engine/sheet/make-print.js';
import { makePrintsOf } from '../support/print.js';

/** How much stands on the sheets, beside the time: a faster print of something else is seen. */
const told = (prints: readonly MadePrint[]): string => {
  const sheets = prints.flatMap(({ drawing }) => drawing.sheets);
  return `${sheets.length} sheets, ${sheets.reduce((sum, { items }) => sum + items.length, 0)} items, scale ${prints[0]!.record.scale}`;
};

const few = { iterations: 3, warmupIterations: 0, time: 1 };

const cases = [
  ['the pin on A4', 'crosshead-pin', { paper: 'A4' }],
  ['the crosshead on A3, one hand', 'crosshead', { hand: 'right' }],
  ['the crosshead as it comes, both hands', 'crosshead', { paper: undefined }],
  ['the crosshead on A4, both hands', 'crosshead', { paper: 'A4' }],
] as const;

const named = await Promise.all(cases.map(async ([title, name, options]) => [`${title}: ${told(await makePrintsOf(name, options))}`, name, options] as const));

describe('a print from parameters to sheets', () => {
  for (const [title, name, options] of named)
    bench(title, async () => void (await makePrintsOf(name, options)), few);
});

/** A plate with so many stations in a chain, each with a second place from the datum. */
function problemOf(count: number) {
  const at = stationBook();
  const face = at.datum('x', 'face');
  let last = face;
  for (let i = 1; i <= count; i += 1) last = at.from(last, 1 + i / 7, `hole ${i}`);
  const stations = at.all();
  return axisProblem('x', stations, new Set(stations.map(({ id }) => id)));
}

describe('the choice of distances', () => {
  for (const count of [25, 100, 400]) {
    const problem = problemOf(count);
    const { proof } = chooseDimensions(problem, () => 0);
    bench(`${count} coordinates, rank ${proof.rank}`, () => void chooseDimensions(problem, () => 0));
  }
});
