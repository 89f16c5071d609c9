import { describe, expect, it } from 'vitest';
import { resolveValues } from '../../../engine/part/resolve.js';
import { factorOf, scaledPart, scaleValues } from '../../../engine/part/scaling/index.js';
import { scaleReport } from '../../../engine/plan/scaled/report.js';
import type { Item } from '../../../engine/sheet/drawing.js';
import { textBox } from '../../../engine/sheet/place/pieces.js';
import { makeScaleSheets } from '../../../engine/sheet/scaled/make-scale-sheets.js';
import { builtInGenerator } from '../../support/built-in-generator.js';

async function sheetsOf(name: string, to: string, asked: { readonly scale?: string; readonly paper?: string } = {}) {
  const generator = await builtInGenerator(name);
  const values = resolveValues(generator, {}, undefined);
  const factor = factorOf({ to, engine: generator.build(values).engine });
  const made = scaleValues(generator, values, factor.value);
  const job = { original: { generator, values }, generator: scaledPart(generator, factor), ...made, factor, series: undefined };
  const report = await scaleReport({ ...job, shop: undefined, unit: 'in' });
  const sheets = await makeScaleSheets({ ...job, report, unit: 'in', units: undefined, paper: asked.paper, scale: asked.scale, angle: 'third' });
  return { ...sheets, report };
}

/** The box of the lines of one view, paper mm. */
function extentOf(items: readonly Item[], group: string): { readonly width: number; readonly height: number; readonly left: number; readonly bottom: number } {
  const points = items.flatMap((item) => (item.kind === 'stroke' && item.group === group && item.curve.kind === 'line' ? [item.curve.from, item.curve.to] : []));
  expect(points.length).toBeGreaterThan(4);
  const [x, y] = [points.map(([each]) => each), points.map(([, each]) => each)];
  return { width: Math.max(...x) - Math.min(...x), height: Math.max(...y) - Math.min(...y), left: Math.min(...x), bottom: Math.min(...y) };
}

describe('old and new side by side', async () => {
  const { drawing, report } = await sheetsOf('crosshead', '7.25 in');
  const [beside] = drawing.sheets;
  const words = beside!.items.flatMap((item) => (item.kind === 'text' ? [item.text] : []));

  it('stand on one sheet at one scale, true to it: 1 5/8 in and 2.356 in long', () => {
    const [before, after] = [extentOf(beside!.items, 'before, front'), extentOf(beside!.items, 'after, front')];
    expect(words).toContain('1:1');
    expect(before.width).toBeCloseTo(1.625 * 25.4, 3);
    expect(after.width).toBeCloseTo(1.45 * 1.625 * 25.4, 3);
    expect(before.height).toBeCloseTo(25.4, 3);
    expect(after.height).toBeCloseTo(38.1, 3);
  });

  it('stand beside each other, with their feet in line', () => {
    const [before, side, after] = [extentOf(beside!.items, 'before, front'), extentOf(beside!.items, 'before, right'), extentOf(beside!.items, 'after, front')];
    expect(after.left).toBeGreaterThan(side.left + side.width + 5);
    expect(after.bottom).toBeCloseTo(before.bottom, 3);
  });

  it('are the first sheet of the document, whose sheets are counted through', () => {
    const counted = drawing.sheets.map(({ items }) => items.flatMap((item) => (item.kind === 'text' && /^\d+ of \d+$/.test(item.text) ? [item.text] : [])));
    counted.forEach((texts, i) => expect(texts).toEqual([`${String(i + 1)} of ${String(drawing.sheets.length)}`]));
  });

  it('are named with the engine and their sizes over all, and said to be for comparing', () => {
    for (const text of ['Tormentil, 5 inch gauge', 'Tormentil, 7.25 in gauge', 'over all 1.625 x 1.000 x 1.063 in', 'Both at the one scale of this sheet: to compare, not to work from.']) expect(words).toContain(text);
  });

  it('nothing that is lettered runs out of the sheet, on any sheet', () => {
    for (const sheet of drawing.sheets)
      for (const item of sheet.items) {
        if (item.kind !== 'text' || item.angle !== 0) continue;
        const box = textBox(item, 0);
        expect(box.left, item.text).toBeGreaterThan(0);
        expect(box.right, item.text).toBeLessThan(sheet.size[0]);
      }
  });

  it('the report follows, with every parameter, and the record is the report', () => {
    const lettered = new Set(drawing.sheets.slice(1).flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : []))));
    for (const { parameter } of report.lines) expect(lettered, parameter).toContain(parameter);
    for (const heading of ['Nothing needs a decision', 'Strength, at the same boiler pressure', 'Machines', 'Taps', 'Test pieces', 'Bar to buy', 'Fits', 'Cautions']) expect(lettered).toContain(heading);
  });
});

it('what is to be decided stands on the sheets, with room for an answer', async () => {
  const { drawing } = await sheetsOf('crosshead', '3.5 in');
  const lettered = drawing.sheets.slice(1).flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])));
  expect(lettered).toEqual(expect.arrayContaining(['To be decided', 'Decided', 'bodyHeight', 'padThread']));
});

it('a long rod finds a scale at which both have room', async () => {
  const { drawing } = await sheetsOf('connecting-rod', '7.25 in');
  const scale = drawing.sheets[0]!.items.flatMap((item) => (item.kind === 'text' && /^\d+:\d+$/.test(item.text) ? [item.text] : []));
  const [paper, part] = scale[0]!.split(':').map(Number) as [number, number];
  const factor = paper / part;
  // Between centres 6 1/2 in, and both rounds: 9/16 and 3/8 in. The ends are arcs: lines run at least from bore to bore.
  expect(extentOf(drawing.sheets[0]!.items, 'after, above').width / extentOf(drawing.sheets[0]!.items, 'before, above').width).toBeCloseTo(1.45, 2);
  expect(factor).toBeLessThanOrEqual(1);
});

it('a scale at which they have no room is refused', async () => {
  await expect(sheetsOf('connecting-rod', '7.25 in', { scale: '5:1', paper: 'A4' })).rejects.toThrow('old and new connecting rod find no room side by side at 5:1; leave out --scale or take a larger --paper.');
});
