import { describe, expect, it } from 'vitest';
import type { DrawingSheet, Item } from '../../engine/sheet/drawing.js';
import { drawingArea, paperNamed } from '../../engine/sheet/frame.js';
import { printedParts, printsOf, type PrintOptions } from '../support/print.js';
import { faultsOf, isText } from './crossings.js';
import { boxesShare, boxRound, grownBox, inkBox, pointsOn, type Box } from './paper-geometry.js';

const asked: readonly (readonly [string, PrintOptions])[] = [
  ['as it comes', { paper: undefined }],
  ['in inches on A3', {}],
  ['in millimetres on A3', { units: 'mm' }],
  ['in inches with millimetres in brackets on A3', { units: 'in', secondary: true }],
  ['in millimetres with inches in brackets on Tabloid', { units: 'mm', secondary: true, paper: 'Tabloid' }],
  ['in first angle on A3', { angle: 'first' }],
  ['in millimetres in first angle on Tabloid', { angle: 'first', units: 'mm', paper: 'Tabloid' }],
  ['on A4', { paper: 'A4' }],
  ['on Letter', { paper: 'Letter' }],
  ['in millimetres on A4', { paper: 'A4', units: 'mm' }],
];

const around = (item: Item): Box => {
  if (isText(item)) return inkBox(item);
  if (item.kind === 'stroke') return boxRound(pointsOn(item.curve, 0.5));
  return boxRound(item.shape.kind === 'polygon' ? item.shape.points : pointsOn({ kind: 'arc', centre: item.shape.centre, radius: item.shape.radius, start: 0, sweep: 360 }));
};

const union = (boxes: readonly Box[]): Box => boxRound(boxes.flatMap((box) => [[box.left, box.bottom], [box.right, box.top]] as const));

/** What stands on a sheet as one: a view with all that is said on it, the notes, the title block; a table by its pieces, for it may flow over columns. */
function blocksOf(sheet: DrawingSheet): readonly (readonly [string, readonly Box[]])[] {
  const groups = [...new Set(sheet.items.map(({ group }) => group))].filter((group) => group !== 'Frame' && !group.startsWith('set-up'));
  return groups.map((group) => {
    const boxes = sheet.items.filter((item) => item.group === group).map(around);
    return [group, group === 'operations' ? boxes : [union(boxes)]];
  });
}

describe.each(printedParts.flatMap((name) => asked.map(([how, options]) => [name, how, options] as const)))('the %s %s', (name, _, options) => {
  it('crosses nothing that it must not, on any sheet', async () => {
    const faults = (await printsOf(name, options)).flatMap(({ drawing, record }) =>
      drawing.sheets.flatMap((sheet, i) =>
        faultsOf(sheet).map(({ pair, first, second, at }) => `${record.hand} sheet ${i + 1}: ${pair}: ${first} / ${second} at ${at.map((value) => value.toFixed(1)).join(', ')}`),
      ),
    );
    expect(faults).toEqual([]);
  });

  it('keeps all but the frame inside the frame', async () => {
    for (const { drawing, record } of await printsOf(name, options))
      drawing.sheets.forEach((sheet) => {
        const area = drawingArea(paperNamed(record.paper.name), sheet.size[0] < sheet.size[1] ? 'portrait' : 'landscape');
        const box = union(sheet.items.filter(({ group }) => group !== 'Frame').map(around));
        expect([sheet.title, box.left >= area.left - 1e-6, box.bottom >= area.bottom - 1e-6, box.right <= area.right + 1e-6, box.top <= area.top + 1e-6]).toEqual([sheet.title, true, true, true, true]);
      });
  });

  it('keeps views, tables, notes and title block apart', async () => {
    for (const print of await printsOf(name, options))
      for (const sheet of print.drawing.sheets) {
        const blocks = blocksOf(sheet);
        blocks.forEach(([a, first], k) => {
          for (const [b, second] of blocks.slice(k + 1))
            expect([sheet.title, a, b, first.some((one) => second.some((other) => boxesShare(one, other, 1e-6)))]).toEqual([sheet.title, a, b, false]);
        });
      }
  });

  it('keeps clear of the marks of the frame', async () => {
    for (const { drawing } of await printsOf(name, options))
      for (const sheet of drawing.sheets) {
        const marks = sheet.items.flatMap((item) => (item.group === 'Frame' && item.kind === 'stroke' ? [grownBox(boxRound(pointsOn(item.curve)), 0.3)] : []));
        const texts = sheet.items.filter(isText).filter(({ group }) => group !== 'Frame');
        for (const text of texts) for (const mark of marks) expect([text.text, boxesShare(inkBox(text), mark)]).toEqual([text.text, false]);
      }
  });

  it('gives every size a place, by the rules', async () => {
    for (const { record } of await printsOf(name, options)) for (const check of record.checks) expect([check.name, check.passed]).toEqual([check.name, true]);
  });
});
