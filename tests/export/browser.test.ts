import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawingToSvg } from '../../engine/export/svg.js';
import { measureText } from '../../engine/lettering/index.js';
import type { TextItem } from '../../engine/sheet/drawing.js';
import { sampleDrawing } from './sample.js';

const executablePath = '/usr/bin/chromium';
const flags = ['--headless', '--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-component-update', '--no-first-run'];
/** CSS pixels to the millimetre: 96 to the inch. */
const pixels = 96 / 25.4;

describe.skipIf(!existsSync(executablePath))(`an SVG in a browser (needs ${executablePath})`, () => {
  const drawing = sampleDrawing();
  const folder = mkdtempSync(join(tmpdir(), 'print-'));
  const sheet = drawing.sheets[0];
  if (!sheet) throw new Error('a sheet');
  const texts = sheet.items.filter((item): item is TextItem => item.kind === 'text');
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    const file = join(folder, 'sheet.svg');
    writeFileSync(file, await drawingToSvg(sheet, drawing));
    browser = await chromium.launch({ executablePath, args: flags });
    page = await browser.newPage();
    await page.goto(pathToFileURL(file).href);
    await page.evaluate('document.fonts.ready.then(() => true)');
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  it('is as large as the paper', async () => {
    const box = (await page.evaluate('(({ width, height }) => [width, height])(document.documentElement.getBoundingClientRect())')) as number[];
    // The browser counts in sixty-fourths of a pixel.
    expect(Math.abs((box[0] ?? 0) - 210 * pixels)).toBeLessThan(1 / 64);
    expect(Math.abs((box[1] ?? 0) - 297 * pixels)).toBeLessThan(1 / 64);
  });

  it('draws the known line 100 mm long', async () => {
    const script = `(() => {
      const path = document.querySelector('[data-about="known line"]');
      const box = path.getBoundingClientRect();
      return [path.getTotalLength(), box.width];
    })()`;
    const [inDrawing, onScreen] = (await page.evaluate(script)) as number[];
    expect(inDrawing).toBeCloseTo(100, 3);
    expect(onScreen).toBeGreaterThanOrEqual(100 * pixels - 0.01);
    expect(onScreen).toBeLessThan(100.3 * pixels);
  });

  it('sets every line of text as wide as it was measured, within 0.2 mm', async () => {
    const script = `[...document.querySelectorAll('text')].map((text) => {
      const last = text.getNumberOfChars() - 1;
      return [text.textContent, Number(text.getAttribute('x')), text.getStartPositionOfChar(0).x, text.getEndPositionOfChar(last).x];
    })`;
    const set = (await page.evaluate(script)) as [string, number, number, number][];
    expect(set.map(([words]) => words).sort()).toEqual(texts.map((item) => item.text).sort());
    for (const [words, x, start, end] of set) {
      const item = texts.find((each) => each.text === words);
      if (!item || /[⌀⌴⌵↧]$/.test(words)) continue;
      const left = item.at[0] - { left: 0, middle: 0.5, right: 1 }[item.anchor] * measureText(words, item.height, item.style).width;
      if (item.angle === 0) expect(Math.abs(x - left)).toBeLessThan(0.001);
      expect(Math.abs(start - x)).toBeLessThan(0.001);
      expect(Math.abs(end - start - measureText(words, item.height, item.style).width)).toBeLessThan(0.2);
    }
  });

  it('letters reach as high and as low as they were measured, within 0.2 mm', async () => {
    const plain = texts.filter((item) => !/[⌀⌴⌵↧]/.test(item.text));
    // A hundred times life size, since a canvas rounds to pixels.
    const asked = plain.map((item) => ({ text: item.text, font: `${item.style === 'bold' ? 'bold ' : ''}${(item.height / 0.729) * 100}px "DejaVu Sans Condensed"` }));
    const script = `(() => {
      const canvas = document.createElementNS('http://www.w3.org/1999/xhtml', 'canvas').getContext('2d');
      return ${JSON.stringify(asked)}.map(({ text, font }) => {
        canvas.font = font;
        const { actualBoundingBoxAscent, actualBoundingBoxDescent } = canvas.measureText(text);
        return [actualBoundingBoxAscent / 100, actualBoundingBoxDescent / 100];
      });
    })()`;
    const reach = (await page.evaluate(script)) as [number, number][];
    plain.forEach((item, index) => {
      const { ascent, descent } = measureText(item.text, item.height, item.style);
      expect(Math.abs((reach[index]?.[0] ?? 0) - ascent)).toBeLessThan(0.2);
      expect(Math.abs(Math.max(0, reach[index]?.[1] ?? 0) - descent)).toBeLessThan(0.2);
    });
  });

  it('takes every letter from the embedded fonts: none is missing, none comes from the machine', async () => {
    const session = await page.context().newCDPSession(page);
    await session.send('DOM.enable');
    await session.send('CSS.enable');
    const { root } = await session.send('DOM.getDocument', { depth: -1 });
    const { nodeIds } = await session.send('DOM.querySelectorAll', { nodeId: root.nodeId, selector: 'text, tspan' });
    expect(nodeIds.length).toBeGreaterThan(50);
    let glyphs = 0;
    for (const nodeId of nodeIds) {
      const { fonts } = await session.send('CSS.getPlatformFontsForNode', { nodeId });
      for (const font of fonts) {
        expect(font).toMatchObject({ familyName: 'DejaVu Sans Condensed', isCustomFont: true });
        glyphs += font.glyphCount;
      }
    }
    expect(glyphs).toBeGreaterThan(400);
  });
});
