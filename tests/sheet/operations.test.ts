import { describe, expect, it } from 'vitest';
import type { Item } from '../../engine/sheet/drawing.js';
import { partShown, printedParts, printsOf } from '../support/print.js';
import { isStroke, isText } from './crossings.js';
import { distance } from './paper-geometry.js';

/** Numbers in balloons; the nought of a zero mark is none. */
const numbered = (items: readonly Item[], wanted: (item: Item) => boolean): number[] =>
  items.filter(isText).filter((item) => item.use === 'balloon' && item.about !== 'zero' && wanted(item)).map(({ text }) => Number(text));

describe.each(printedParts)('the operation sheets of the %s', (name) => {
  it('have a row for each operation, in order', async () => {
    for (const print of await printsOf(name)) {
      const part = await partShown(print);
      const rows = print.drawing.sheets.flatMap(({ items }) => numbered(items, ({ group }) => group === 'operations'));
      // Long settings go on in a further row with the same number.
      expect(rows.filter((number, i) => number !== rows[i - 1])).toEqual(part.operations.map(({ number }) => number));
      expect(print.record.operations.map(({ number }) => number)).toEqual([...new Set(rows)]);
    }
  });

  it('have each row on the sheet that the record names', async () => {
    for (const { record, drawing } of await printsOf(name))
      for (const { number, sheet, title, cutter } of record.operations) {
        const items = drawing.sheets[sheet - 1]!.items;
        expect(numbered(items, ({ group }) => group === 'operations')).toContain(number);
        const words = items.filter(isText).filter(({ about, use }) => about === `operation ${number}` && use === 'table').map(({ text }) => text).join(' ');
        for (const word of `${title} ${cutter}`.split(' ')) expect(words).toContain(word);
      }
  });

  it('have a balloon on a picture for each row, and no balloon without a row', async () => {
    for (const print of await printsOf(name)) {
      const part = await partShown(print);
      const balloons = print.drawing.sheets.flatMap(({ items }) => numbered(items, ({ group }) => group.startsWith('set-up')));
      expect([...balloons].sort((a, b) => a - b)).toEqual(part.operations.map(({ number }) => number));
    }
  });

  it('draw each balloon 10 mm wide, its leader from the rim to an edge of the picture', async () => {
    for (const { drawing } of await printsOf(name))
      for (const { items } of drawing.sheets)
        for (const text of items.filter(isText).filter(({ use, group }) => use === 'balloon' && group.startsWith('set-up')).filter(({ about }) => about !== 'zero')) {
          const mine = items.filter(isStroke).filter(({ group, about }) => group === text.group && about === text.about);
          const circle = mine.find(({ curve }) => curve.kind === 'arc')!.curve;
          const leader = mine.find(({ curve }) => curve.kind === 'line')!.curve;
          if (circle.kind !== 'arc' || leader.kind !== 'line') throw new Error('a balloon is a circle with a straight leader');
          expect(circle.radius).toBe(5);
          expect(distance(circle.centre, leader.from)).toBeCloseTo(5, 6);
          expect(distance(circle.centre, leader.to)).toBeGreaterThan(5);
        }
  });

  it('line the balloons of a picture up in columns', async () => {
    for (const { drawing } of await printsOf(name))
      for (const { items } of drawing.sheets) {
        const circles = items.filter(isStroke).filter(({ group, role, curve }) => group.startsWith('set-up') && role === 'leader' && curve.kind === 'arc');
        for (const group of new Set(circles.map((each) => each.group))) {
          const columns = new Set(circles.filter((each) => each.group === group).map(({ curve }) => (curve.kind === 'arc' ? curve.centre[0].toFixed(3) : '')));
          // A set-up that comes again later has a picture of its own.
          expect(columns.size).toBeLessThanOrEqual(4);
        }
      }
  });

  it('name the set-up and how the work is held, and mark the zero on its picture', async () => {
    for (const print of await printsOf(name)) {
      const part = await partShown(print);
      const all = print.drawing.sheets.flatMap(({ items }) => items);
      const words = all.filter(isText).filter(({ group }) => group === 'operations').map(({ text }) => text).join(' ');
      for (const { id, holding, zero } of part.setUps) {
        expect(words).toContain(`Set-up ${id}`);
        expect(words).toContain(`Hold: ${holding}.`);
        const marks = all.filter(isText).filter(({ group, about }) => group === `set-up ${id}` && about === 'zero');
        expect([id, marks.length >= 1]).toEqual([id, zero.length > 0]);
      }
    }
  });

  it('say what to do to which size: the text of every cut', async () => {
    for (const { record } of await printsOf(name))
      for (const { number, cuts, text } of record.operations) expect([number, cuts.length === 0 || text.length > 10]).toEqual([number, true]);
  });
});
