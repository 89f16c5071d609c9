import { describe, expect, it } from 'vitest';
import { lineGroups, lineStyles } from '../../templates/line-styles.js';
import { paperNamed } from '../../engine/sheet/frame.js';
import { missingCharacters } from '../../engine/lettering/index.js';
import { printedParts, printsOf } from '../support/print.js';
import { isStroke, isText } from './crossings.js';
import { distance } from './paper-geometry.js';

/** ISO 3098-1 (read in a table of its sizes). */
const heights = [2.5, 3.5, 5, 7, 10, 14, 20];

describe.each(printedParts)('the lines and letters of the %s', (name) => {
  it('use wide lines for outlines alone, twice as wide as all others of a view', async () => {
    for (const { drawing, record } of await printsOf(name)) {
      const group = lineGroups[paperNamed(record.paper.name).lineGroup];
      expect(group.wide / group.narrow).toBeCloseTo(2, 9);
      const views = new Set(record.views.map(({ id }) => id));
      for (const { items } of drawing.sheets)
        for (const item of items.filter(isStroke).filter((each) => views.has(each.group))) expect(lineStyles[item.role].width).toBe(item.role === 'visible' ? 'wide' : item.role === 'symbol' ? 0.35 : 'narrow');
    }
  });

  it('draw centre lines as chains, hidden lines dashed, all others unbroken', async () => {
    const dashes = { centre: 'chain', hidden: 'dashed', phantom: 'double-chain', 'cutting-plane': 'chain' } as Readonly<Record<string, string>>;
    for (const { drawing } of await printsOf(name))
      for (const { items } of drawing.sheets) for (const item of items.filter(isStroke)) expect(lineStyles[item.role].dashes).toBe(dashes[item.role] ?? 'continuous');
  });

  it('draw circles and arcs as such: no chain of short chords', async () => {
    for (const { drawing, record } of await printsOf(name)) {
      const views = new Set(record.views.map(({ id }) => id));
      for (const { items } of drawing.sheets) {
        const short = items.filter(isStroke).filter(({ group, role, about, curve }) => views.has(group) && role === 'visible' && about === undefined && curve.kind === 'line' && distance(curve.from, curve.to) < 0.4);
        // A short edge may be there; a chain of them is an arc that was lost.
        expect(short.length).toBeLessThanOrEqual(8);
      }
    }
  });

  it('letter everything in heights of the series, nothing under 2.5, sizes and tables 3.5', async () => {
    for (const { drawing } of await printsOf(name))
      for (const { items } of drawing.sheets)
        for (const item of items.filter(isText)) {
          expect(heights).toContain(item.height);
          if (item.use === 'dimension') expect([item.text, item.height]).toEqual([item.text, 3.5]);
          if (item.use === 'balloon') expect(item.height).toBeGreaterThanOrEqual(3.5);
          expect([item.text, [0, 90]]).toEqual([item.text, expect.arrayContaining([item.angle])]);
        }
  });

  it('have every character in the font or among the signs', async () => {
    for (const { drawing } of await printsOf(name)) for (const { items } of drawing.sheets) for (const item of items.filter(isText)) expect([item.text, missingCharacters(item.text, item.style)]).toEqual([item.text, []]);
  });

  it('hatch all cut areas of the part at 45 degrees and one pitch a view, inside the outline', async () => {
    for (const { drawing, record } of await printsOf(name))
      for (const view of record.views) {
        const lines = drawing.sheets[view.sheet - 1]!.items.filter(isStroke).flatMap(({ group, role, curve }) => (group === view.id && role === 'hatch' && curve.kind === 'line' ? [curve] : []));
        expect([view.id, lines.length > 0]).toEqual([view.id, view.section !== null && !view.id.startsWith('detail') ? true : lines.length > 0]);
        const offsets = lines.map(({ from, to }) => {
          expect(Math.abs(to[1] - from[1])).toBeCloseTo(Math.abs(to[0] - from[0]), 6);
          return (from[0] - from[1]) / Math.SQRT2;
        });
        const [least] = offsets;
        const steps = [...new Set(offsets.map((offset) => Math.round((offset - least!) * 1e6) / 1e6))].sort((a, b) => a - b);
        const pitch = Math.min(...steps.slice(1).map((step, i) => step - steps[i]!));
        if (steps.length > 1) {
          expect(pitch).toBeGreaterThanOrEqual(1.5 - 1e-6);
          expect(pitch).toBeLessThanOrEqual(5 + 1e-6);
          for (const step of steps) expect(step / pitch).toBeCloseTo(Math.round(step / pitch), 3);
        }
        const [left, bottom, right, top] = view.box;
        for (const { from, to } of lines) for (const [x, y] of [from, to]) expect([view.id, x > left - 0.1 && x < right + 0.1 && y > bottom - 0.1 && y < top + 0.1]).toEqual([view.id, true]);
      }
  });

  it('show the sections’ planes where they lie, with arrows the way one looks and the letter twice', async () => {
    for (const { drawing, record } of await printsOf(name))
      for (const view of record.views) {
        const letter = /^section ([A-H])-\1$/.exec(view.id)?.[1];
        if (letter === undefined) continue;
        const all = drawing.sheets.flatMap(({ items }) => items);
        const marks = all.filter(({ about }) => about === `section ${letter}`);
        expect(marks.filter(isText).map(({ text, height }) => [text, height])).toEqual([[letter, 5], [letter, 5]]);
        expect(marks.filter(({ kind }) => kind === 'fill')).toHaveLength(2);
        expect(all.filter(isText).filter(({ group, text }) => group === view.id && text === `${letter}–${letter}`)).toHaveLength(1);
        const host = record.views.find(({ id }) => id === marks[0]!.group)!;
        // The plane's ends stand on the coordinate at which the section cuts.
        const upright = host.right.endsWith(view.section!.axis);
        const sense = (upright ? host.right : host.up).startsWith('+') ? 1 : -1;
        const at = host.origin[upright ? 0 : 1] + sense * view.section!.value * host.scale;
        for (const item of marks.filter(isStroke).filter(({ role }) => role === 'visible')) {
          if (item.curve.kind !== 'line') throw new Error('a plane is drawn straight');
          expect([item.curve.from[upright ? 0 : 1], item.curve.to[upright ? 0 : 1]]).toEqual([expect.closeTo(at, 4), expect.closeTo(at, 4)]);
        }
      }
  });
});

describe('threads seen from their end', () => {
  it('are three quarters of a circle, thin, open at the upper right, without the circle of a chamfer', async () => {
    const arcs = (await printsOf('crosshead')).flatMap(({ drawing, record }) => {
      const views = new Set(record.views.map(({ id }) => id));
      return drawing.sheets.flatMap(({ items }) => items.filter(isStroke).flatMap(({ group, role, curve }) => (views.has(group) && role === 'thread' && curve.kind === 'arc' ? [curve] : [])));
    });
    expect(arcs.length).toBeGreaterThan(0);
    for (const { start, sweep } of arcs) {
      expect(Math.abs(sweep)).toBeCloseTo(270, 6);
      const first = ((Math.min(start, start + sweep) % 360) + 360) % 360;
      // From just past the top round to just past the right: neither end on a centre line.
      expect(first).toBeGreaterThan(90);
      expect(first).toBeLessThan(100);
    }
  });
});
