import { beforeAll, describe, expect, it } from 'vitest';
import { papers } from '../../templates/papers/index.js';
import { resolveValues } from '../../engine/part/resolve.js';
import { drawingArea } from '../../engine/sheet/frame-paper.js';
import type { TextItem } from '../../engine/sheet/drawing.js';
import type { FlowedSheet } from '../../engine/sheet/operations/flow.js';
import { operationSheets, prepareOperations } from '../../engine/sheet/operations/operation-sheets.js';
import { loadKernel } from '../../engine/solid/kernel.js';
import sieve from '../parts/sieve.js';

describe.each(papers.map((paper) => [paper.name, paper] as const))('sixty holes in no order, on %s', (_, paper) => {
  const orientation = paper.orientations[0]!;
  let sheets: readonly FlowedSheet[];
  beforeAll(async () => {
    const kernel = await loadKernel();
    const part = sieve.build(resolveValues(sieve, {}, undefined));
    const area = drawingArea(paper, orientation);
    sheets = operationSheets(part, prepareOperations(kernel, part, 'mm'), { unit: 'mm', other: false }, paper, orientation, [{ ...area, top: area.bottom + 40 }]);
  });
  const texts = (): readonly TextItem[] => sheets.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' && item.about === 'operation 10' ? [item] : [])));

  it('are all there, each with its number', () => {
    const numbers = texts().filter(({ text }) => /^\d+$/.test(text)).map(({ text }) => Number(text));
    for (let hole = 1; hole <= 60; hole += 1) expect(numbers).toContain(hole);
  });

  it('stay on the sheet', () => {
    const { left, right, bottom, top } = drawingArea(paper, orientation);
    for (const { at, text } of texts()) expect([text, at[0] > left, at[0] < right, at[1] > bottom + 40, at[1] < top]).toEqual([text, true, true, true, true]);
  });

  it('say that the material has no speed', () => expect(texts().map(({ text }) => text).join(' ')).toContain('material not in the tables'));
});
