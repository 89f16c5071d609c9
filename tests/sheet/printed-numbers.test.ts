import { describe, expect, it } from 'vitest';
import { axisProblem } from '../../engine/sheet/dimension/equations.js';
import { shownStations } from '../../engine/sheet/dimension/shown-stations.js';
import { solidOf } from '../../engine/solid/build.js';
import { loadKernel } from '../../engine/solid/kernel.js';
import type { MadePrint } from '../../engine/sheet/make-print.js';
import { partShown, printedParts, printsOf } from '../support/print.js';
import { firstNumber, millimetresOf } from './reading.js';

/** The inverse of a square table, by elimination with the largest pivot. */
function inverse(table: readonly (readonly number[])[]): number[][] {
  const n = table.length;
  const rows = table.map((line, i) => [...line, ...Array.from({ length: n }, (_, k) => (k === i ? 1 : 0))]);
  for (let column = 0; column < n; column += 1) {
    const pivot = rows.slice(column).reduce((best, line, i) => (Math.abs(line[column]!) > Math.abs(rows[best]![column]!) ? column + i : best), column);
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    const by = rows[column]!;
    if (Math.abs(by[column]!) < 1e-9) throw new Error('the printed sizes leave a coordinate open');
    rows.forEach((line, i) => {
      const share = i === column ? 1 - 1 / by[column]! : line[column]! / by[column]!;
      rows[i] = line.map((value, k) => value - share * by[k]!);
    });
  }
  return rows.map((line) => line.slice(n));
}

const kernel = await loadKernel();

interface Rebuilt {
  readonly name: string;
  readonly found: number;
  readonly bound: number;
  readonly wanted: number;
}

/** Coordinates along an axis from the printed numbers and what holds unsaid: symmetry, equal pitch, the ends of tapers. */
async function rebuild(print: MadePrint, axis: 'x' | 'y' | 'z'): Promise<readonly Rebuilt[]> {
  const part = await partShown(print);
  const problem = axisProblem(axis, part.stations, shownStations(part, solidOf(kernel, part)));
  const { nodes } = problem;
  const first = nodes[0];
  if (first === undefined) return [];
  const at = new Map(nodes.flatMap((node, i) => node.stations.map(({ id }) => [id, i] as const)));
  const lines: { coefficients: number[]; value: number; half: number }[] = [];
  const put = (entries: readonly (readonly [number, number])[], value: number, half: number): void => {
    const coefficients = nodes.map(() => 0);
    for (const [i, coefficient] of entries) coefficients[i]! += coefficient;
    lines.push({ coefficients, value, half });
  };
  put([[0, 1]], first.value, 0);
  const unit = millimetresOf(print.record.units);
  for (const { id, text } of print.record.dimensions.filter((each) => each.axis === axis && !each.reference)) {
    const { dimension } = problem.candidates.find((each) => each.dimension.id === id)!;
    const { value, half } = firstNumber(text[0]!);
    const sense = Math.sign(dimension.to.value - dimension.from.value);
    put([[at.get(dimension.to.id)!, 1], [at.get(dimension.from.id)!, -1]], sense * value * unit, half * unit);
  }
  for (const { row } of problem.implied) {
    const entries = [...row].map(([id, coefficient]) => [nodes.findIndex((node) => node.id === id), Number(coefficient)] as const);
    // A derived end follows from angles and diameters: its own offset stands for them.
    put(entries, entries.reduce((sum, [i, coefficient]) => sum + coefficient * nodes[i]!.value, 0), 0);
  }
  expect(lines.length).toBe(nodes.length);
  return inverse(lines.map(({ coefficients }) => coefficients)).map((line, i) => ({
    name: nodes[i]!.stations[0]!.name,
    found: line.reduce((sum, share, k) => sum + share * lines[k]!.value, 0),
    bound: line.reduce((sum, share, k) => sum + Math.abs(share) * lines[k]!.half, 0),
    wanted: nodes[i]!.value,
  }));
}

describe.each(printedParts.flatMap((name) => (['in', 'mm'] as const).map((units) => [name, units] as const)))('the numbers printed for the %s in %s', (name, units) => {
  it('rebuild every coordinate of the part to half of the last digits on its way', async () => {
    for (const print of await printsOf(name, { units }))
      for (const axis of ['x', 'y', 'z'] as const)
        for (const { name: station, found, bound, wanted } of await rebuild(print, axis))
          expect([station, Math.abs(found - wanted) <= bound + 1e-6]).toEqual([station, true]);
  });

  it('say the nominal size of the record to half of their last digit', async () => {
    for (const { record } of await printsOf(name, { units }))
      for (const { id, kind, nominal, text, measure } of record.dimensions) {
        if (nominal === null || kind === 'thread' || kind === 'centre hole') continue;
        const { value, half } = firstNumber(text[0]!);
        const unit = measure === 'length' ? millimetresOf(units) : 1;
        expect([id, Math.abs(value * unit - nominal) <= half * unit + 1e-6]).toEqual([id, true]);
      }
  });

  it('stand once each: no size of one feature is said twice', async () => {
    for (const { record } of await printsOf(name, { units })) {
      const keys = record.dimensions.filter(({ reference }) => !reference).map(({ kind, axis, feature, nominal, id }) => [kind, axis, kind === 'distance' ? feature : id, nominal].join(' | '));
      expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
      const texts = record.dimensions.map(({ id }) => id);
      expect(new Set(texts).size).toBe(texts.length);
    }
  });

  it('give the size over all in three directions', async () => {
    for (const print of await printsOf(name, { units })) {
      const part = await partShown(print);
      const solid = solidOf(kernel, part);
      const axes = [0, 1, 2] as const;
      for (const i of axes) {
        const all = Array.from({ length: solid.positions.length / 3 }, (_, k) => solid.positions[3 * k + i]!);
        const whole = Math.max(...all) - Math.min(...all);
        const said = print.record.dimensions.filter(({ kind, axis }) => (kind === 'distance' && axis === 'xyz'[i]) || (kind === 'diameter' && part.attitude.kind === 'turned'));
        expect([i, said.some(({ nominal }) => Math.abs(nominal! - whole) < 0.01)]).toEqual([i, true]);
      }
    }
  });

  it('carry brackets just where they follow from others, and then no tolerance', async () => {
    for (const { record } of await printsOf(name, { units }))
      for (const { reference, text, lower, upper } of record.dimensions) {
        expect(/^\(.*\)( ▲)?$/.test(text[0]!)).toBe(reference);
        if (reference) expect([lower, upper, /[±+/]/.test(text[0]!)]).toEqual([null, null, false]);
      }
  });

  it(`are written in the manner of ${units}`, async () => {
    for (const { record } of await printsOf(name, { units }))
      for (const { text, kind } of record.dimensions) {
        if (kind === 'thread' || kind === 'centre hole' || kind === 'texture' || kind === 'angle') continue;
        // Names of drills and threads keep their own way of writing.
        const line = text[0]!.replace(/\(\D*[\d/. ]+ ?(mm|in)\)|\(#\d+\)/, '');
        if (units === 'in') expect(line).not.toMatch(/(^|[^\d])0\.\d/);
        else expect(line).not.toMatch(/(^|[^\d])\.\d/);
        expect(line).not.toMatch(/\d,\d/);
      }
  });
});
