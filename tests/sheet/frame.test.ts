import { describe, expect, it } from 'vitest';
import type { Item, TextItem } from '../../engine/sheet/drawing.js';
import { checkTitleFields, drawingArea, paperNamed, printCheckBar, projectionSymbol, sheetFrame, sheetSize, titleBlock, type PaperBox, type TitleFields } from '../../engine/sheet/frame.js';
import { textCorners } from '../../engine/lettering/index.js';
import { UserError } from '../../engine/units/user-error.js';
import { printerMargin } from '../../templates/paper.js';
import { papers } from '../../templates/papers/index.js';
import { titleFields } from '../../templates/title-block.js';

const handless: TitleFields = {
  part: 'Crosshead',
  supplement: 'Tormentil, 5 inch gauge',
  documentNumber: 'TM-101-R',
  documentType: 'Shop print',
  owner: 'Tormentil drawings',
  creator: 'trialpiece',
  sheet: 1,
  sheets: 2,
  paper: 'A4',
  scale: '2:1',
  projection: 'third',
  units: 'mm',
  material: 'Mild steel, bright drawn',
  stock: 'Flat 30 × 20, 45 long',
  quantity: '1 right, 1 left',
  generalTolerance: '±0.1',
  generalTexture: 'Ra 3.2',
  finish: 'None',
  edges: 'Break 0.2 × 45°',
};
const fields: TitleFields = { ...handless, hand: 'R' };

const isText = (item: Item): item is TextItem => item.kind === 'text';

function boxOf(item: Item): PaperBox {
  if (item.kind === 'text') return around(textCorners(item));
  if (item.kind === 'fill') throw new Error('a frame has no filled shapes');
  const { curve } = item;
  if (curve.kind === 'line') return around([curve.from, curve.to]);
  if (curve.kind !== 'arc') throw new Error('a frame is made of lines and circles');
  const [x, y] = curve.centre;
  return { left: x - curve.radius, right: x + curve.radius, bottom: y - curve.radius, top: y + curve.radius };
}

function around(points: readonly (readonly [number, number])[]): PaperBox {
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

const within = (inner: PaperBox, outer: PaperBox): boolean =>
  inner.left >= outer.left - 1e-9 && inner.right <= outer.right + 1e-9 && inner.bottom >= outer.bottom - 1e-9 && inner.top <= outer.top + 1e-9;

const meet = (a: PaperBox, b: PaperBox): boolean => a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;

const grown = (box: PaperBox): PaperBox => ({ left: box.left - 0.3, right: box.right + 0.3, bottom: box.bottom - 0.3, top: box.top + 0.3 });

/** All of a block within its box, no word over another word or a line. */
function nothingMeets(block: ReturnType<typeof titleBlock>): void {
  for (const item of block.items) expect(within(boxOf(item), block.box)).toBe(true);
  const texts = block.items.filter(isText);
  texts.forEach((text, index) => {
    for (const other of texts.slice(index + 1)) expect([text.text, other.text, meet(boxOf(text), boxOf(other))]).toEqual([text.text, other.text, false]);
    for (const item of block.items) {
      if (item.kind === 'stroke') expect([text.text, meet(boxOf(text), grown(boxOf(item)))]).toEqual([text.text, false]);
    }
  });
}

describe('sheets', () => {
  // Drawing areas of ISO 5457, from memory.
  it.each([
    ['A4', 'portrait', 180, 277],
    ['A3', 'landscape', 390, 277],
  ] as const)('%s leaves %s %d by %d for drawing', (name, orientation, width, height) => {
    const area = drawingArea(paperNamed(name), orientation);
    expect(area.right - area.left).toBeCloseTo(width, 9);
    expect(area.top - area.bottom).toBeCloseTo(height, 9);
  });

  it('are found by name, capitals or not', () => {
    expect(paperNamed('tabloid').name).toBe('Tabloid');
    expect(() => paperNamed('A44')).toThrow(new UserError('there is no paper "A44"; there are A4, A3, Letter, Tabloid; the nearest is A4'));
  });

  it.each(papers.flatMap((paper) => paper.orientations.map((orientation) => [paper.name, orientation] as const)))(
    'the frame of %s %s stays off the edge of the paper',
    (name, orientation) => {
      const paper = paperNamed(name);
      const [width, height] = sheetSize(paper, orientation);
      const reach = { left: printerMargin, bottom: printerMargin, right: width - printerMargin, top: height - printerMargin };
      for (const item of sheetFrame(paper, orientation, { grid: true })) expect(within(boxOf(item), reach)).toBe(true);
    },
  );

  it('have a grid of 8 by 6 fields on A3 (ISO 5457, from memory), without I and O', () => {
    const words = sheetFrame(paperNamed('A3'), 'landscape', { grid: true }).filter(isText).map((item) => item.text);
    expect([...new Set(words)].sort().join('')).toBe('12345678ABCDEF');
  });
});

describe('titleBlock', () => {
  const corner = [200, 10] as const;
  it('stands in its corner, 180 wide, with no word over a line or another word', () => {
    const block = titleBlock(fields, corner);
    expect(block.box.right).toBe(200);
    expect(block.box.bottom).toBe(10);
    expect(block.box.right - block.box.left).toBe(180);
    nothingMeets(block);
  });

  it('shows every field', () => {
    const words = titleBlock(fields, corner).items.filter(isText).map((item) => item.text);
    for (const value of ['Crosshead', 'Tormentil, 5 inch gauge', 'R', 'TM-101-R', '1 of 2', '2:1', '1 right, 1 left', 'Ra 3.2', 'Break 0.2 × 45°']) {
      expect(words).toContain(value);
    }
  });

  it('letters the name 7 mm, the hand 14 mm, nothing under 2.5 mm', () => {
    const texts = titleBlock(fields, corner).items.filter(isText);
    expect(texts.find((item) => item.text === 'Crosshead')?.height).toBe(7);
    expect(texts.find((item) => item.text === 'R')?.height).toBe(14);
    expect(Math.min(...texts.map((item) => item.height))).toBe(2.5);
  });

  it('grows upward when the words are long, and still nothing meets', () => {
    const long = { ...fields, part: 'WWWWWWWWWWWWWWWWWWWWWWWWW', finish: 'harden and temper '.repeat(12), creator: 'MMMMMMMMMMMMMMMMMMMM' };
    const block = titleBlock(long, corner);
    expect(block.box.top).toBeGreaterThan(titleBlock(fields, corner).box.top);
    nothingMeets(block);
  });

  it('does without a hand', () => {
    const block = titleBlock(handless, corner);
    expect(block.items.filter(isText).some((item) => item.about === 'field:hand')).toBe(false);
    nothingMeets(block);
  });

  it('is at most 56 high where the words are short', () => {
    const { box } = titleBlock(fields, corner);
    expect(box.top - box.bottom).toBeLessThanOrEqual(56);
    const bare = titleBlock(handless, corner).box;
    expect(bare.top - bare.bottom).toBeLessThanOrEqual(56);
  });

  it('gives a long finish a line of its own, rather than many short lines', () => {
    const treated = { ...fields, finish: 'Harden: cherry red, quench upright in oil; temper to dark straw (about 250 °C).' };
    const lines = titleBlock(treated, corner).items.filter(isText).filter((item) => item.about === 'field:finish');
    expect(lines.map((item) => item.text)).toEqual([treated.finish]);
  });

  it('refuses words beyond all measure', () => {
    expect(() => titleBlock({ ...fields, finish: 'harden and temper '.repeat(200) }, corner)).toThrow(/^the title block would be \d+ mm high, and 130 mm is the most: make its words shorter, "harden and temper /);
  });
});

describe('titleBlock of a following sheet', () => {
  const corner = [200, 10] as const;
  const following = (changes: Partial<TitleFields>): ReturnType<typeof titleBlock> => titleBlock({ ...fields, ...changes }, corner, { kind: 'following' });
  const said = (block: ReturnType<typeof titleBlock>): readonly string[] => block.items.filter(isText).map((item) => item.text);

  it.each([
    ['a handed part', fields],
    ['a part without a hand', handless],
    ['both units', { ...fields, units: 'inch [mm]' }],
    ['a longer name and number', { ...handless, part: 'Crosshead pin', documentNumber: 'CROSSHEAD-PIN' }],
  ])('is 180 wide and at most 22 high for %s', (_, shown) => {
    const block = titleBlock(shown, corner, { kind: 'following' });
    expect(block.box).toMatchObject({ left: 20, right: 200, bottom: 10 });
    expect(block.box.top - block.box.bottom).toBeLessThanOrEqual(22);
    nothingMeets(block);
  });

  // The fields that ISO 7200 makes mandatory, by the table in templates/title-block.ts.
  it('keeps every mandatory field of ISO 7200, with revision and units', () => {
    const block = following({ owner: 'Tormentil works', approval: 'Checker', dateOfIssue: '2031-04-05', revision: 'B' });
    const about = new Set(block.items.filter(isText).map((item) => item.about));
    const mandatory = Object.entries(titleFields).flatMap(([name, field]) => ('mandatory' in field ? [name] : []));
    expect(mandatory.length).toBe(8);
    for (const name of [...mandatory, 'hand', 'supplement', 'revision', 'units']) expect([name, about.has(`field:${name}`)]).toEqual([name, true]);
    for (const value of ['R', 'Crosshead', 'Tormentil works', 'TM-101-R', 'Shop print', '1 of 2', 'mm', 'B', 'Checker', '2031-04-05']) expect(said(block)).toContain(value);
  });

  it('letters the name 7 mm, the hand at least 10 mm, nothing under 2.5 mm', () => {
    const texts = following({}).items.filter(isText);
    expect(texts.find((item) => item.text === 'Crosshead')?.height).toBe(7);
    expect(texts.find((item) => item.text === 'R')?.height).toBeGreaterThanOrEqual(10);
    expect(Math.min(...texts.map((item) => item.height))).toBe(2.5);
  });

  it('keeps its lines in their places from sheet to sheet', () => {
    const lines = (sheet: number) => following({ sheet, sheets: 12 }).items.filter((item) => item.kind === 'stroke');
    expect(lines(12)).toEqual(lines(2));
  });

  it.each([
    { part: 'WWWWWWWWWWWWWWWWWWWWWWWWW', supplement: 'WWWWWWWWWWWWWWWWWWWWWWWWW' },
    { owner: 'The drawing office of the model works, second floor', creator: 'MMMMMMMMMMMMMMMMMMMM', documentType: 'WWWWWWWWWWWWWWWWWWWWWWWWWWWWWW', approval: 'MMMMMMMMMMMMMMMMMMMM' },
    { documentNumber: 'WWWWWWWWWWWWWWWW', units: 'inch [mm]', sheet: 999, sheets: 999, supplement: 'MMMMMMMMMMMMMMMMMMMMMMMMM' },
  ])('grows upward for %o, and still nothing meets', (changes) => {
    nothingMeets(following(changes));
  });
});

describe('checkTitleFields', () => {
  it('accepts blank boxes for the pen', () => {
    expect(() => checkTitleFields(fields)).not.toThrow();
  });

  it.each([
    [{ part: 'A name of more than 25 letters' }, `the title block's field "Title" holds 25 characters at most, not 30: "A name of more than 25 letters"`],
    [{ owner: ' ' }, `the title block's field "Owner" must not be empty`],
    [{ material: '鋼' }, `the title block's field "Material" has a character that can't be lettered: "鋼"`],
  ])('refuses %o', (change, sentence) => {
    expect(() => checkTitleFields({ ...fields, ...change })).toThrow(new UserError(sentence));
  });
});

describe('printCheckBar', () => {
  it.each([
    ['mm', 50],
    ['in', 2 * 25.4],
  ] as const)('in %s is %d mm long', (units, length) => {
    const { items, box } = printCheckBar([30, 20], units);
    const lengths = items.map((item) => (item.kind === 'stroke' && item.curve.kind === 'line' ? item.curve.to[0] - item.curve.from[0] : 0));
    expect(Math.max(...lengths)).toBeCloseTo(length, 9);
    for (const item of items) expect(within(boxOf(item), box)).toBe(true);
  });
});

// ISO 5456-2, proportions from memory; which side the circles stand on follows from what first and third angle mean.
describe.each(['third', 'first'] as const)('projection symbol for %s angle', (method) => {
  const items = projectionSymbol('Title block', [50, 50], 3.5, method);
  const circles = items.flatMap((item) => (item.kind === 'stroke' && item.curve.kind === 'arc' ? [item.curve] : []));
  const lines = items.flatMap((item) => (item.kind === 'stroke' && item.role === 'symbol' && item.curve.kind === 'line' ? [item.curve] : []));
  const upright = lines.filter((line) => line.from[0] === line.to[0]).sort((a, b) => a.from[0] - b.from[0]);

  it('has circles of h and 2h', () => {
    expect(circles.map((circle) => circle.radius * 2).sort((a, b) => a - b)).toEqual([3.5, 7]);
  });

  it('has a cone 2h long with its small end to the left', () => {
    const [small, large] = upright;
    if (!small || !large) throw new Error('two ends');
    expect(Math.abs(small.to[1] - small.from[1])).toBeCloseTo(3.5, 9);
    expect(Math.abs(large.to[1] - large.from[1])).toBeCloseTo(7, 9);
    expect(large.from[0] - small.from[0]).toBeCloseTo(7, 9);
  });

  it(`shows the view from the left on the ${method === 'third' ? 'left' : 'right'}`, () => {
    const coneAt = upright[0]?.from[0] ?? 0;
    const circlesAt = circles[0]?.centre[0] ?? 0;
    expect(circlesAt < coneAt).toBe(method === 'third');
  });
});
