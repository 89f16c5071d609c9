import { describe, expect, it } from 'vitest';
import { layoutText, measureText, plainFont, type FontStyle } from '../../engine/lettering/index.js';
import { openFont } from '../../engine/lettering/open-font.js';

const styles: readonly FontStyle[] = ['normal', 'bold'];
const texts = ['AVATAR waffle', '4× ⌀6.35 H7 (+0.015/0) ↧12', '30° ±0.05', '⌵ ⌴ M6×0.75 – ½ in', ''];

describe.each(styles)('a line of text in %s letters', (style) => {
  it.each(texts)('is as wide and as high measured as set: %j', (text) => {
    const { width, ascent, descent } = layoutText(text, 3.5, style);
    expect(measureText(text, 3.5, style)).toEqual({ width, ascent, descent });
  });

  it('stands in the plain font as fontkit sets it with every shaping rule turned off', async () => {
    const off = { kern: false, liga: false, clig: false, calt: false, ccmp: false, locl: false };
    const { font } = await openFont(style);
    for (const text of texts) {
      const shaped = font.layout(text, off);
      const plain = (await plainFont(style)).layout(text);
      expect(plain.glyphs.map(({ id }) => id)).toEqual(shaped.glyphs.map(({ id }) => id));
      expect(plain.positions.map(({ xAdvance }) => xAdvance)).toEqual(shaped.positions.map(({ xAdvance }) => xAdvance));
      expect(plain.advanceWidth).toBe(shaped.advanceWidth);
    }
  });
});
