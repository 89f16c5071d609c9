import { describe, expect, it } from 'vitest';
import type { MadePrint } from '../../engine/sheet/make-print.js';
import { printedParts, printsOf } from '../support/print.js';
import { isStroke } from './crossings.js';
import { boxRound, distance, piecesOf, pointsOn } from './paper-geometry.js';
import { arrowOf, drawnDimensions, isLevel, isUpright, linearOnly, type DrawnDimension } from './reading.js';

interface Tiered {
  readonly id: string;
  readonly side: 'left' | 'right' | 'below' | 'above';
  /** From the outline's edge, mm. */
  readonly off: number;
  readonly low: number;
  readonly high: number;
}

/** On which side of its view each dimension line stands, and how far off the outline. */
function tiersOf(drawn: readonly DrawnDimension[]): ReadonlyMap<string, readonly Tiered[]> {
  const views = new Map<string, Tiered[]>();
  for (const { recorded, view, lines, extensions } of linearOnly(drawn)) {
    const [left, bottom, right, top] = view.box;
    const [line] = lines;
    const level = isLevel(line!);
    const at = line![0][level ? 1 : 0];
    const spans = extensions.map(([a]) => a[level ? 0 : 1]);
    const side = level ? (at < (bottom + top) / 2 ? 'below' : 'above') : at < (left + right) / 2 ? 'left' : 'right';
    const off = { below: bottom - at, above: at - top, left: left - at, right: at - right }[side];
    views.set(view.id, [...(views.get(view.id) ?? []), { id: recorded.id, side, off, low: Math.min(...spans), high: Math.max(...spans) }]);
  }
  return views;
}

const everyPrint = async (name: string): Promise<readonly MadePrint[]> => printsOf(name, { units: 'in' });

describe.each(printedParts)('the dimensions of the %s', (name) => {
  it('stand outside, the first 10 mm off the outline, the next 8 mm on', async () => {
    for (const print of await everyPrint(name))
      for (const tiers of tiersOf(drawnDimensions(print)).values())
        for (const { id, off } of tiers) {
          const tier = (off - 10) / 8;
          expect([id, tier >= -1e-6, Math.abs(tier - Math.round(tier)) < 1e-4]).toEqual([id, true, true]);
        }
  });

  it('stand the shorter nearer, where one span holds another on the same side', async () => {
    for (const print of await everyPrint(name))
      for (const tiers of tiersOf(drawnDimensions(print)).values())
        for (const a of tiers)
          for (const b of tiers) {
            const holds = a !== b && a.side === b.side && a.low <= b.low + 1e-6 && a.high >= b.high - 1e-6 && a.high - a.low > b.high - b.low + 1e-6;
            if (holds) expect([a.id, b.id, a.off > b.off]).toEqual([a.id, b.id, true]);
          }
  });

  it('have extension lines that begin 1 mm off the outline or on a centre line, and run 2.5 mm past', async () => {
    for (const print of await everyPrint(name)) {
      const { drawing } = print;
      for (const { recorded, view, extensions, lines } of linearOnly(drawnDimensions(print))) {
        const level = isLevel(lines[0]!);
        const at = lines[0]![0][level ? 1 : 0];
        const ink = drawing.sheets[recorded.sheet - 1]!.items.filter(isStroke).filter((item) => item.group === view.id && ['visible', 'smooth', 'thread'].includes(item.role) && item.about === undefined);
        for (const [a, b] of extensions) {
          const i = level ? 1 : 0;
          const [start, end] = Math.abs(a[i] - at) > Math.abs(b[i] - at) ? [a, b] : [b, a];
          expect([recorded.id, (end[i] - at) * Math.sign(end[i] - start[i])]).toEqual([recorded.id, expect.closeTo(2.5, 6)]);
          // A millimetre back from its beginning the line would meet the end of what it measures.
          const back = Math.sign(start[i] - end[i]);
          const foot = level ? ([start[0], start[1] + back] as const) : ([start[0] + back, start[1]] as const);
          const near = Math.min(...ink.flatMap(({ curve }) => pointsOn(curve, 0.2).map((point) => distance(point, foot))));
          const onCentre = drawing.sheets[recorded.sheet - 1]!.items
            .filter(isStroke)
            .some((item) => item.group === view.id && item.role === 'centre' && item.curve.kind === 'line' && [item.curve.from, item.curve.to].some((point) => distance(point, start) < 0.05 || Math.abs(point[1 - i]! - start[1 - i]!) < 0.01));
          expect([recorded.id, near, onCentre || near < 0.02]).toEqual([recorded.id, near, true]);
        }
      }
    }
  });

  it('have arrows three times as long as wide, all of one size, as long as the figures are high', async () => {
    for (const { drawing } of await everyPrint(name))
      for (const { items } of drawing.sheets)
        for (const item of items) {
          if (item.kind !== 'fill' || item.shape.kind !== 'polygon') continue;
          const arrow = arrowOf(item)!;
          expect(arrow.length).toBeCloseTo(3.5, 6);
          expect(arrow.length / arrow.width).toBeCloseTo(3, 6);
        }
  });

  it('read from below or from the right, above their line and clear of it by 1 mm at least', async () => {
    for (const print of await everyPrint(name))
      for (const { recorded, texts, lines } of linearOnly(drawnDimensions(print))) {
        const [text] = texts;
        expect([recorded.id, text!.angle]).toEqual([recorded.id, isLevel(lines[0]!) ? 0 : 90]);
        const off = isLevel(lines[0]!) ? text!.at[1] - lines[0]![0][1] : lines[0]![0][0] - text!.at[0];
        expect([recorded.id, off >= 1 || off <= -3.5 - 1]).toEqual([recorded.id, true]);
      }
  });

  it('use no outline and no centre line of their view as a dimension line', async () => {
    for (const print of await everyPrint(name))
      for (const { recorded, view, lines } of linearOnly(drawnDimensions(print))) {
        const [line] = lines;
        const level = isLevel(line!);
        const i = level ? 1 : 0;
        const along = print.drawing.sheets[recorded.sheet - 1]!.items.filter(isStroke).some(
          ({ group, role, about, curve }) =>
            group === view.id && about === undefined && (role === 'visible' || role === 'centre') && curve.kind === 'line' &&
            (level ? isLevel : isUpright)([curve.from, curve.to]) && Math.abs(curve.from[i] - line![0][i]) < 0.3 &&
            Math.min(Math.max(curve.from[1 - i]!, curve.to[1 - i]!), Math.max(line![0][1 - i]!, line![1][1 - i]!)) > Math.max(Math.min(curve.from[1 - i]!, curve.to[1 - i]!), Math.min(line![0][1 - i]!, line![1][1 - i]!)),
        );
        expect([recorded.id, along]).toEqual([recorded.id, false]);
      }
  });

  it('have leaders that lean, with a shoulder of 4 mm, and an arrow or a dot at their foot', async () => {
    for (const print of await everyPrint(name))
      for (const { recorded, leaders, arrows } of drawnDimensions(print).filter((each) => each.leaders.length > 0)) {
        const slant = leaders.filter((piece) => !isLevel(piece));
        expect([recorded.id, slant.length]).toEqual([recorded.id, 1]);
        const [a, b] = slant[0]!;
        const lean = Math.abs((Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI) % 180;
        const steep = Math.min(lean, 180 - lean);
        expect([recorded.id, steep >= 14.99 && steep <= 75.01]).toEqual([recorded.id, true]);
        expect(Math.min(...leaders.filter(isLevel).map(([p, q]) => distance(p, q)).concat(4))).toBeLessThanOrEqual(4 + 1e-9);
        const feet = arrows.map((fill) => (fill.shape.kind === 'disc' ? fill.shape.centre : arrowOf(fill)!.tip));
        expect([recorded.id, feet.some((foot) => distance(foot, a) < 0.05 || distance(foot, b) < 0.05)]).toEqual([recorded.id, true]);
      }
  });

  it('have leaders of holes and radii that aim at the centre', async () => {
    for (const print of await everyPrint(name))
      for (const { recorded, view, leaders } of drawnDimensions(print)) {
        if (recorded.kind !== 'hole' && recorded.kind !== 'radius') continue;
        const slant = leaders.find((piece) => !isLevel(piece))!;
        const arcs = print.drawing.sheets[recorded.sheet - 1]!.items.filter(isStroke).flatMap(({ group, curve, about }) => (group === view.id && about === undefined && curve.kind === 'arc' ? [curve] : []));
        const foot = slant.flatMap((end) => arcs.filter((arc) => Math.abs(distance(arc.centre, end) - arc.radius) < 0.01));
        // A hole laid open by a section is pointed at on its axis; there is no circle to aim at.
        if (foot.length === 0 && view.section !== null) continue;
        const [a, b] = slant;
        const off = foot.map(({ centre }) => Math.abs((b[0] - a[0]) * (a[1] - centre[1]) - (a[0] - centre[0]) * (b[1] - a[1])) / distance(a, b));
        expect([recorded.id, Math.min(...off) < 0.05]).toEqual([recorded.id, true]);
      }
  });

  it('have their text where the record says', async () => {
    for (const print of await everyPrint(name))
      for (const { recorded, texts } of drawnDimensions(print)) {
        const [left, bottom, right, top] = recorded.box;
        expect(texts.map(({ text }) => text)).toEqual(recorded.text);
        for (const { at } of texts) expect([recorded.id, at[0] >= left - 1 && at[0] <= right + 1 && at[1] >= bottom - 1 && at[1] <= top + 1]).toEqual([recorded.id, true]);
      }
  });
});

describe.each(printedParts)('the centre lines of the %s', (name) => {
  it('cross on every round feature of 3 mm or more, and run 1.5 to 5 mm past it', async () => {
    for (const { record, drawing } of await everyPrint(name))
      for (const view of record.views) {
        const mine = drawing.sheets[view.sheet - 1]!.items.filter(isStroke).filter(({ group, about }) => group === view.id && about === undefined);
        const centres = mine.flatMap(({ role, curve }) => (role === 'centre' && curve.kind === 'line' ? [[curve.from, curve.to] as const] : []));
        const circles = mine.flatMap(({ role, curve }) => (role === 'visible' && curve.kind === 'arc' && Math.abs(curve.sweep) > 359 && curve.radius >= 1.5 ? [curve] : []));
        for (const { centre, radius } of circles) {
          const level = centres.find((line) => isLevel(line) && Math.abs(line[0][1] - centre[1]) < 0.01 && Math.min(line[0][0], line[1][0]) < centre[0] - radius - 1.4 && Math.max(line[0][0], line[1][0]) > centre[0] + radius + 1.4);
          const upright = centres.find((line) => isUpright(line) && Math.abs(line[0][0] - centre[0]) < 0.01 && Math.min(line[0][1], line[1][1]) < centre[1] - radius - 1.4 && Math.max(line[0][1], line[1][1]) > centre[1] + radius + 1.4);
          expect([view.id, centre, level !== undefined, upright !== undefined]).toEqual([view.id, centre, true, true]);
        }
        const outline = boxRound(mine.filter(({ role }) => role === 'visible').flatMap(({ curve }) => piecesOf(curve).flat()));
        for (const line of centres) {
          const box = boxRound([...line]);
          expect([view.id, box.left >= outline.left - 5 && box.right <= outline.right + 5 && box.bottom >= outline.bottom - 5 && box.top <= outline.top + 5]).toEqual([view.id, true]);
        }
      }
  });
});
