import { beforeAll, describe, expect, it } from 'vitest';
import { drawingToSvg } from '../../engine/export/svg.js';
import { denseSheet } from '../support/dense-sheet.js';
import { sampleDrawing, text } from './sample.js';

const drawing = sampleDrawing();
const [a4, a3] = drawing.sheets;
if (!a4 || !a3) throw new Error('two sheets');

describe('an SVG', () => {
  let svg: string;
  beforeAll(async () => {
    svg = await drawingToSvg(a4, drawing);
  });

  it.each([
    [a4, '210mm', '297mm', '0 0 210 297'],
    [a3, '420mm', '297mm', '0 0 420 297'],
  ])('has its size in millimetres (%#)', async (sheet, width, height, box) => {
    const root = /<svg [^>]*>/.exec(await drawingToSvg(sheet, drawing))?.[0];
    expect(root).toContain(` width="${width}"`);
    expect(root).toContain(` height="${height}"`);
    expect(root).toContain(` viewBox="${box}"`);
  });

  it('says what it is', () => {
    expect(svg).toContain('<title>Crosshead, right hand: Sheet 1</title>');
    expect(svg).toContain(`<desc>${drawing.subject}</desc>`);
    expect(svg).toContain('<metadata>crosshead, Tormentil</metadata>');
  });

  it('has a group for each view or block, and layers in it by name', () => {
    expect(svg).toMatch(/<g id="group-1" class="group" data-name="Frame">/);
    expect(svg).toMatch(/<g class="layer visible" data-name="Visible outlines" stroke-width="0.5" stroke-linecap="round">/);
    expect(svg).toMatch(/<g class="layer hidden" data-name="Hidden lines" stroke-width="0.25" stroke-linecap="butt">/);
  });

  it('leaves no dashing to the viewer', () => {
    expect(svg).not.toContain('dasharray');
  });

  it('draws circles as true arcs', () => {
    expect(svg).toContain('d="M74 182A14 14 0 0 0 46 182A14 14 0 0 0 74 182"');
  });

  it('writes plain numbers, of three decimals at most', () => {
    const numbers = [...svg.matchAll(/ (?:d|x|y|cx|cy|r|transform)="([^"]*)"/g)].flatMap((match) => match[1]?.match(/-?[\d.]+(?:e[-+]?\d+)?/g) ?? []);
    expect(numbers.length).toBeGreaterThan(1000);
    for (const number of numbers) expect(number).toMatch(/^-?(0|[1-9]\d*)(\.\d{0,2}[1-9])?$/);
    expect(numbers).not.toContain('-0');
  });

  it('writes what would be markup as text', async () => {
    const sheet = { ...a4, items: [text('a < b & "c" > d', [50, 50])] };
    const written = await drawingToSvg(sheet, { ...drawing, title: '1 < 2 & 3' });
    expect(written).toMatch(/>a &lt; b &amp; ("|&quot;)c("|&quot;) (&gt;|>) d</);
    expect(written).toContain('<title>1 &lt; 2 &amp; 3: Sheet 1</title>');
  });

  it('comes out in the same bytes twice', async () => {
    expect(await drawingToSvg(a4, sampleDrawing())).toBe(svg);
  });

  it('stays small: the fonts are cut down to the letters in use', async () => {
    expect(svg.length).toBeLessThan(80_000);
    expect((await drawingToSvg(denseSheet(), drawing)).length).toBeLessThan(600_000);
  });
});
