import { create, openSync } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { fontPath, subsetFont, type FontStyle } from '../../engine/lettering/index.js';
import { readTables } from '../../engine/lettering/sfnt.js';

const letters = [...'Crosshead 12.5 ±µ½'];
const code = (letter: string): number => letter.codePointAt(0) ?? 0;

describe.each<FontStyle>(['normal', 'bold'])('the %s font cut down', (style) => {
  it('has the letters asked for, with the advances of the whole font, and no other', async () => {
    const subset = create(Buffer.from(await subsetFont(style, letters)));
    const whole = openSync(fontPath(style));
    for (const letter of letters) {
      expect(subset.hasGlyphForCodePoint(code(letter))).toBe(true);
      const [cut, full] = [subset.glyphForCodePoint(code(letter)), whole.glyphForCodePoint(code(letter))];
      expect(cut.advanceWidth).toBe(full.advanceWidth);
      expect(cut.bbox).toEqual(full.bbox);
    }
    expect(subset.hasGlyphForCodePoint(code('Z'))).toBe(false);
  });

  it('shows our own signs as blanks, for they are drawn', async () => {
    const subset = create(Buffer.from(await subsetFont(style, ['⌀', '⌴', 'A'])));
    for (const sign of '⌀⌴') {
      expect(subset.hasGlyphForCodePoint(code(sign))).toBe(true);
      expect(Number.isFinite(subset.glyphForCodePoint(code(sign)).bbox.maxY)).toBe(false);
    }
  });

  it('has the tables that readers ask for, with no kerning, and true checksums', async () => {
    const bytes = await subsetFont(style, letters);
    const tables = readTables(bytes);
    for (const name of ['OS/2', 'cmap', 'glyf', 'head', 'hhea', 'hmtx', 'loca', 'maxp', 'name', 'post']) expect(tables.has(name)).toBe(true);
    for (const name of ['GPOS', 'GSUB', 'kern']) expect(tables.has(name)).toBe(false);
    // OpenType specification, table "head": the words of a whole font add up to this constant.
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    let sum = 0;
    for (let at = 0; at < bytes.length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
    expect(sum).toBe(0xb1b0afba);
  });

  it('is the same whatever the order of the letters', async () => {
    expect(await subsetFont(style, [...letters].reverse())).toEqual(await subsetFont(style, letters));
  });

  it('refuses a letter that the font lacks', async () => {
    await expect(subsetFont(style, ['漢'])).rejects.toThrow(new RangeError('the font has no character U+6F22'));
  });
});
