import { beforeAll, describe, expect, it } from 'vitest';
import type { PDFDocumentProxy, PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { drawingToPdf } from '../../engine/export/pdf.js';
import { drawingToSvg } from '../../engine/export/svg.js';
import { fontSize, measureText } from '../../engine/lettering/index.js';
import type { Drawing } from '../../engine/sheet/drawing.js';
import { lineWidthSeries } from '../../templates/line-styles.js';
import { papers } from '../../templates/papers/index.js';
import { linesOf, openPdf, textsOf, type Point, type ReadLine, type ReadText } from '../support/read-pdf.js';
import { knownLine, sampleDrawing, sheetOf } from './sample.js';

const apart = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

describe('a PDF read back', () => {
  const drawing = sampleDrawing();
  let bytes: Uint8Array;
  let file: PDFDocumentProxy;
  let page: PDFPageProxy;
  let texts: readonly ReadText[];
  let lines: readonly ReadLine[];

  beforeAll(async () => {
    bytes = await drawingToPdf(drawing);
    file = await openPdf(bytes);
    page = await file.getPage(1);
    [texts, lines] = [await textsOf(page), await linesOf(page)];
  });

  it('has a page a sheet', () => {
    expect(file.numPages).toBe(2);
  });

  it('has a known line of 100 mm where it was drawn, to 0.001 mm', () => {
    const found = lines.find((line) => apart(line.from, knownLine.from) < 0.01);
    if (!found) throw new Error('the line is there');
    expect(apart(found.from, found.to)).toBeCloseTo(100, 3);
    expect(apart(found.to, knownLine.to)).toBeLessThan(0.001);
    expect(found.width).toBeCloseTo(0.25, 5);
  });

  it('draws with widths of the series of ISO 128, and with those of signs, a tenth of their height', () => {
    const widths = [...new Set(lines.map((line) => Number(line.width.toFixed(3))))];
    for (const width of widths) expect([...lineWidthSeries]).toContain(width);
  });

  it('has every word of the drawing as text', () => {
    const read = texts.map((each) => each.text.trim());
    for (const word of ['Crosshead', 'Tormentil, 5 inch gauge', '100 ±0.05', 'slanted 30°', 'M6×0.75', 'check: 50 mm, print at 100 %', '2:1']) {
      expect(read).toContain(word);
    }
  });

  it('keeps the signs among the letters, though they are drawn', () => {
    const line = texts.filter((each) => Math.abs(each.at[1] - 256) < 0.01 && each.at[0] < 110).sort((a, b) => a.at[0] - b.at[0]);
    expect(line.map((each) => each.text).join('').replaceAll(' ', '')).toBe('⌴⌀9↧4⌵⌀11×90°');
  });

  it('sets text in its place, as wide as it was measured', () => {
    const found = texts.find((each) => each.text === '100 ±0.05');
    const { width } = measureText('100 ±0.05', 3.5, 'normal');
    expect(found?.size).toBeCloseTo(fontSize(3.5, 'normal'), 4);
    expect(found?.width).toBeCloseTo(width, 2);
    expect(apart(found?.at ?? [0, 0], [90 - width / 2, 251])).toBeLessThan(0.001);
  });

  it('turns text', () => {
    expect(texts.find((each) => each.text === 'slanted 30°')?.angle).toBeCloseTo(30, 3);
    const upright = texts.find((each) => each.text === 'M6×0.75');
    expect(upright?.angle).toBeCloseTo(90, 3);
    expect(upright?.at[0]).toBeCloseTo(192, 3);
    expect(upright?.at[1]).toBeCloseTo(160 - measureText('M6×0.75', 3.5, 'bold').width / 2, 3);
  });

  it('says what it is', async () => {
    const { info } = await file.getMetadata();
    expect(info).toMatchObject({ Title: drawing.title, Subject: drawing.subject, Keywords: 'crosshead, Tormentil', CreationDate: 'D:20000101000000Z' });
  });

  it('has bookmarks for its sheets and for the groups on them', async () => {
    const outline = await file.getOutline();
    expect(outline.map((entry) => entry.title)).toEqual(['Sheet 1', 'Sheet 2']);
    expect(outline[0]?.items.map((entry: { title: string }) => entry.title)).toEqual(['Frame', 'Title block', 'Print check', 'Sample', 'Line roles']);
  });

  it('has layers by line role', async () => {
    const layers = [...(await file.getOptionalContentConfig())].map(([, group]) => (group as { name: string }).name);
    expect(layers).toContain('Visible outlines');
    expect(layers).toContain('Hidden lines');
    expect(layers.at(-1)).toBe('Lettering');
  });

  it('embeds its two fonts, cut down to what is used', () => {
    const names = [...Buffer.from(bytes).toString('latin1').matchAll(/\/FontName \/([A-Z]{6}\+\S+)/g)].map((match) => match[1]);
    expect(names).toHaveLength(2);
    for (const name of names) expect(name).toMatch(/^[A-Z]{6}\+DejaVuSansCondensed(-Bold)?$/);
    expect(bytes.length).toBeLessThan(60_000);
  });

  it('agrees with the SVG: every straight stroke is in both, in the same place', async () => {
    const sheet = drawing.sheets[0];
    if (!sheet) throw new Error('a sheet');
    const svg = await drawingToSvg(sheet, drawing);
    const number = '(-?[\\d.]+)';
    const drawn = [...svg.matchAll(new RegExp(`M${number} ${number}L${number} ${number}(?![L\\dZ.])`, 'g'))].map((match): [Point, Point] => {
      const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = match.slice(1).map(Number);
      return [[x1, 297 - y1], [x2, 297 - y2]];
    });
    expect(drawn.length).toBe(lines.length);
    expect(drawn.length).toBeGreaterThan(150);
    drawn.forEach(([from, to], index) => {
      const line = lines[index];
      if (!line) throw new Error('as many lines in both');
      expect(apart(from, line.from)).toBeLessThan(0.002);
      expect(apart(to, line.to)).toBeLessThan(0.002);
    });
  });

  it('comes out in the same bytes twice', async () => {
    expect(Buffer.compare(Buffer.from(await drawingToPdf(sampleDrawing())), Buffer.from(bytes))).toBe(0);
  });

  it('has another identity for another drawing', async () => {
    const other = await openPdf(await drawingToPdf({ ...drawing, sheets: drawing.sheets.slice(0, 1) }));
    expect(other.fingerprints[0]).not.toBe(file.fingerprints[0]);
  });
});

describe('page sizes', () => {
  // ISO 216 and ASME Y14.1 sizes in points of 1/72 in: mm x 72 / 25.4.
  const points: Readonly<Record<string, readonly [number, number]>> = {
    A4: [595.276, 841.89],
    A3: [841.89, 1190.551],
    Letter: [612, 792],
    Tabloid: [792, 1224],
  };

  it.each(papers.flatMap((paper) => paper.orientations.map((orientation) => ({ name: paper.name, orientation }))))(
    '$name $orientation is true to 0.01 pt',
    async ({ name, orientation }) => {
      const drawing: Drawing = { title: 'Blank', subject: 'Blank', keywords: [], sheets: [sheetOf(name, orientation, [])] };
      const page = await (await openPdf(await drawingToPdf(drawing))).getPage(1);
      const [short = 0, long = 0] = points[name] ?? [];
      const [width, height] = orientation === 'portrait' ? [short, long] : [long, short];
      expect(Math.abs((page.view[2] ?? 0) - width)).toBeLessThan(0.01);
      expect(Math.abs((page.view[3] ?? 0) - height)).toBeLessThan(0.01);
    },
  );
});
