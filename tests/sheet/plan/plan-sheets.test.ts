import { describe, expect, it } from 'vitest';
import { drawingArea, paperNamed } from '../../../engine/sheet/frame.js';
import type { Item } from '../../../engine/sheet/drawing.js';
import { makePlansOf, plansOf } from '../../support/plan.js';
import type { PrintOptions } from '../../support/print.js';
import { faultsOf, isFill, isStroke, isText } from '../crossings.js';
import { boxRound, inkBox, pointsOn } from '../paper-geometry.js';

const cases: readonly (readonly [string, PrintOptions])[] = [
  ['crosshead', {}],
  ['crosshead', { units: 'mm', paper: 'A3', hand: 'right' }],
  ['crosshead-pin', {}],
  ['crosshead-pin', { units: 'mm', secondary: true }],
  ['expansion-link', {}],
  ['connecting-rod', { hand: 'left', units: 'mm' }],
  ['valve-rod-fork', { paper: 'Letter', hand: 'right' }],
  ['gland-nut', {}],
];

describe.each(cases)('the operation sheets of the %s, %o', (name, options) => {
  it('have a row and a picture for every operation, on the sheet that the record names', async () => {
    for (const { drawing, record } of await plansOf(name, options))
      for (const { number, sheet } of record.operations) {
        const { items } = drawing.sheets[sheet - 1]!;
        expect([number, items.some((item) => isText(item) && item.use === 'balloon' && item.text === String(number))]).toEqual([number, true]);
        expect([number, items.filter((item) => item.group === `picture ${number}`).length > 8]).toEqual([number, true]);
        for (const word of ['Hold', 'Cutter']) expect(items.some((item) => isText(item) && item.about === `operation ${number}` && item.text === word)).toBe(true);
      }
  });

  it('let no text meet a text, a line or an arrow', async () => {
    for (const { drawing, record } of await plansOf(name, options))
      for (const sheet of drawing.sheets) {
        const faults = faultsOf(sheet).filter(({ pair }) => pair.startsWith('text'));
        expect(faults.map(({ pair, first, second, at }) => `${record.hand} ${sheet.title}: ${pair}: ${first} / ${second} at ${at.map((value) => value.toFixed(1)).join(', ')}`)).toEqual([]);
      }
  });

  it('keep within the frame, and each picture to the left of its words', async () => {
    for (const { drawing, record } of await plansOf(name, options))
      for (const { size, items, title } of drawing.sheets) {
        const area = drawingArea(paperNamed(record.paper.name), size[0] < size[1] ? 'portrait' : 'landscape');
        const box = boxRound(items.filter(({ group }) => group !== 'Frame').flatMap(cornersOf));
        expect([title, box.left >= area.left - 1e-6, box.right <= area.right + 1e-6, box.bottom >= area.bottom - 1e-6, box.top <= area.top + 1e-6]).toEqual([title, true, true, true, true]);
        for (const { number } of record.operations) {
          const picture = items.filter(({ group }) => group === `picture ${number}`);
          if (picture.length === 0) continue;
          const hold = items.find((item) => isText(item) && item.text === 'Hold' && item.about === `operation ${number}`)!;
          expect([number, boxRound(picture.flatMap(cornersOf)).right < inkBox(hold as never).left]).toEqual([number, true]);
        }
      }
  });

  it('set apart what is cut, and mark zero and cutter where there are any', async () => {
    for (const { drawing, record } of await plansOf(name, options))
      for (const { number, sheet, volume, cutterFrom, setUp } of record.operations) {
        const picture = drawing.sheets[sheet - 1]!.items.filter(({ group }) => group === `picture ${number}`);
        if (volume.removed > 0) {
          expect([number, picture.some((item) => isStroke(item) && (item.role === 'visible' || item.role === 'hidden') && item.about === undefined)]).toEqual([number, true]);
          expect([number, picture.some((item) => isStroke(item) && item.role === 'removed')]).toEqual([number, true]);
        }
        expect([number, picture.some(({ about }) => about === 'cutter')]).toEqual([number, cutterFrom !== null]);
        const held = record.setUps.find(({ id }) => id === setUp)!;
        expect([number, picture.some(({ about }) => about === 'zero')]).toEqual([number, held.zero.length > 0]);
      }
  });
});

it('give the same sheets and the same record twice', async () => {
  const [first, second] = [await makePlansOf('crosshead-pin'), await makePlansOf('crosshead-pin')];
  expect(JSON.stringify(second)).toBe(JSON.stringify(first));
});

it('have one for each hand, named by it, and one for a part without a hand', async () => {
  expect((await plansOf('crosshead')).map(({ fileStem }) => fileStem)).toEqual(['crosshead-right-plan', 'crosshead-left-plan']);
  expect((await plansOf('crosshead-pin')).map(({ fileStem }) => fileStem)).toEqual(['crosshead-pin-plan']);
});

it('carry boxes beside their sums, and stops in a bold frame', async () => {
  const [plan] = await plansOf('crosshead');
  const { record, drawing } = plan!;
  expect(record.operations.find(({ number }) => number === 60)!.readings).toEqual(['Over all at rear end: A ____ less 1.625 = take off ____, made ____']);
  const [boss] = record.operations.find(({ number }) => number === 20)!.readings;
  expect(boss).toBe('boss: ⌀ A ____ less .5625 = take off ____, made ____');
  const words = drawing.sheets.flatMap(({ items }) => items.filter(isText)).filter(({ text }) => text.startsWith('STOP'));
  expect(words.length).toBe(record.stops.length);
  expect(words.length).toBeGreaterThan(0);
  for (const { items } of drawing.sheets)
    for (const text of items.filter(isText).filter((each) => each.text.startsWith('STOP'))) {
      const around = items.filter(isStroke).filter(({ role, group, curve }) => role === 'frame' && group === 'operations' && curve.kind === 'line' && curve.from[1] === curve.to[1] && curve.from[1] > text.at[1]);
      expect(around.length).toBeGreaterThan(0);
    }
});

function cornersOf(item: Item): readonly (readonly [number, number])[] {
  if (isText(item)) {
    const box = inkBox(item);
    return [[box.left, box.bottom], [box.right, box.top]];
  }
  if (isFill(item)) return item.shape.kind === 'polygon' ? item.shape.points : [item.shape.centre];
  return pointsOn(item.curve, 0.5);
}
