import { describe, expect, it } from 'vitest';
import { footOn } from '../../../engine/sheet/compose/sheets.js';
import type { Item } from '../../../engine/sheet/drawing.js';
import { drawingArea, printCheckBar, sheetFrame, type PaperBox, type TitleFields } from '../../../engine/sheet/frame.js';
import { columnsOn } from '../../../engine/sheet/operations/columns.js';
import { textCorners } from '../../../engine/lettering/index.js';
import { papers } from '../../../templates/papers/index.js';

const fields: TitleFields = {
  part: 'Crosshead',
  supplement: 'Tormentil, 5 inch gauge',
  hand: 'R',
  documentNumber: 'CROSSHEAD-R',
  documentType: 'operation sheet',
  owner: 'Own workshop',
  creator: 'trialpiece',
  sheet: 10,
  sheets: 12,
  paper: 'A4',
  scale: '2:1',
  projection: 'third',
  units: 'inch',
  material: 'mild steel',
  stock: '1.250 x 1.000 bar, 1.750 long',
  quantity: '1 right, 1 left',
  generalTolerance: 'ISO 2768-m',
  generalTexture: 'Ra 3.2',
  finish: 'bright, oiled',
  edges: 'break .010',
};

const meet = (a: PaperBox, b: PaperBox): boolean => a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
const within = (inner: PaperBox, outer: PaperBox): boolean =>
  inner.left >= outer.left - 1e-9 && inner.right <= outer.right + 1e-9 && inner.bottom >= outer.bottom - 1e-9 && inner.top <= outer.top + 1e-9;

const middleOf = (item: Item): readonly [number, number] => {
  if (item.kind !== 'stroke' || item.curve.kind !== 'line') throw new Error('a frame is made of lines');
  const { from, to } = item.curve;
  return [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
};

const sheets = papers.flatMap((paper) =>
  paper.orientations.flatMap((orientation) => (['mm', 'in'] as const).flatMap((units) => (['full', 'following'] as const).map((kind) => ({ paper, orientation, units, kind, name: paper.name })))),
);

describe.each(sheets)('the foot of $name $orientation, $kind, bar in $units', ({ paper, orientation, units, kind }) => {
  const area = drawingArea(paper, orientation);
  const { items, taken } = footOn(paper, orientation, fields, units, kind);
  const [block, bar, ...marks] = taken as readonly [PaperBox, PaperBox, ...PaperBox[]];

  it('keeps the bar within the frame, off the title block, and a bar of its full length', () => {
    expect(within(bar, area)).toBe(true);
    expect(meet(bar, block)).toBe(false);
    const [length] = items.flatMap((item) =>
      item.group === 'Print check' && item.kind === 'stroke' && item.curve.kind === 'line' && item.curve.from[1] === item.curve.to[1] ? [item.curve.to[0] - item.curve.from[0]] : [],
    );
    expect(length).toBeCloseTo(units === 'mm' ? 50 : 50.8, 9);
  });

  it('puts the bar beside the block on a wide sheet, else right over it', () => {
    if (orientation === 'landscape') expect(bar.right).toBeLessThan(block.left);
    else expect(bar.bottom - block.top).toBeLessThanOrEqual(3);
  });

  it('tells where the bar and its words stand', () => {
    for (const item of items) {
      if (item.group !== 'Print check' || item.kind !== 'text') continue;
      const corners = textCorners(item);
      const box = { left: Math.min(...corners.map((p) => p[0])), right: Math.max(...corners.map((p) => p[0])), bottom: Math.min(...corners.map((p) => p[1])), top: Math.max(...corners.map((p) => p[1])) };
      expect(within(box, bar)).toBe(true);
    }
  });

  it('tells where the centring marks of the frame reach inward', () => {
    const drawn = sheetFrame(paper, orientation).slice(4).map(middleOf);
    expect(drawn.length).toBe(marks.length);
    for (const [x, y] of drawn) {
      // Each mark crosses or ends at the frame, on the middle line of one of the boxes.
      expect(marks.some((mark) => Math.abs((mark.left + mark.right) / 2 - x) < 1e-9 || Math.abs((mark.bottom + mark.top) / 2 - y) < 1e-9)).toBe(true);
    }
  });

  it('leaves columns that meet nothing', () => {
    for (const column of columnsOn(paper, orientation, taken)) {
      expect(within(column, area)).toBe(true);
      for (const box of taken) expect(meet(column, box)).toBe(false);
    }
  });
});

describe('columnsOn', () => {
  it('has more than 235 mm for tables on an upright A4, of the 277 within the frame', () => {
    const [a4] = papers;
    const { taken } = footOn(a4!, 'portrait', fields, 'mm', 'following');
    const [column, ...others] = columnsOn(a4!, 'portrait', taken);
    expect(others).toEqual([]);
    expect(column!.top - column!.bottom).toBeGreaterThan(235);
  });
});

describe('printCheckBar with its words over it', () => {
  it('is narrower and higher', () => {
    const [beside, over] = (['beside', 'over'] as const).map((words) => printCheckBar([0, 0], 'mm', { words }).box);
    expect(over!.right).toBeLessThan(beside!.right);
    expect(over!.top).toBeGreaterThan(beside!.top);
  });
});
