import { beforeAll, describe, expect, it } from 'vitest';
import { resolveValues } from '../../../engine/part/resolve.js';
import { columnsOn } from '../../../engine/sheet/operations/columns.js';
import { operationSheets, prepareOperations, runsOf } from '../../../engine/sheet/operations/operation-sheets.js';
import { cautionText } from '../../../engine/sheet/compose/notes-of.js';
import { drawingArea } from '../../../engine/sheet/frame.js';
import type { PaperBox } from '../../../engine/sheet/frame.js';
import { loadKernel, type Kernel } from '../../../engine/solid/kernel.js';
import { papers } from '../../../templates/papers/index.js';
import pin from '../../../generators/parts/crosshead-pin.js';

describe('cautions of a set-up', () => {
  const part = pin.build(resolveValues(pin, {}, undefined));
  const [a4] = papers;
  const area = drawingArea(a4!, 'portrait');
  let kernel: Kernel;
  beforeAll(async () => {
    kernel = await loadKernel();
  });

  // Feet of several heights bring the end of a sheet before, into and after the last rows of each set-up.
  it.each([20, 35, 50, 65, 80, 95])('stand with the last operation of the set-up, over a foot of %d mm', (high) => {
    const foot: PaperBox = { ...area, top: area.bottom + high };
    expect(columnsOn(a4!, 'portrait', [foot])[0]!.bottom).toBeGreaterThan(foot.top);
    const sheets = operationSheets(part, prepareOperations(kernel, part, 'in'), { unit: 'in', other: false }, a4!, 'portrait', [foot]);
    const warned = runsOf(part).flatMap(({ operations }) => {
      const [first] = operations.flatMap((operation) => operation.caution ?? []);
      return first === undefined ? [] : [{ words: cautionText(first).slice(0, 20), last: operations.at(-1)!.number }];
    });
    expect(warned.length).toBeGreaterThan(1);
    for (const { words, last } of warned) {
      const on = sheets.filter(({ items }) => items.some((item) => item.kind === 'text' && item.text.startsWith(words)));
      expect(on.map(({ operations }) => operations.includes(last))).toEqual([true]);
    }
  });
});
