import type { Font } from 'fontkit';
import type { FontStyle } from './font.js';
import { openFont } from './open-font.js';

/** A letter as it is set: the members of fontkit's glyphs and positions that a writer of files reads, in font units. */
interface PlainRun {
  readonly glyphs: readonly { readonly id: number; readonly advanceWidth: number; readonly codePoints: readonly number[] }[];
  readonly positions: readonly { xAdvance: number; yAdvance: number; xOffset: number; yOffset: number }[];
  readonly advanceWidth: number;
}

/** Sets each character as its own glyph at its own advance, as layoutText does: no kerning, no ligatures, no shaping. */
function plainRun(font: Font, text: string): PlainRun {
  const glyphs = [...text].map((character) => {
    const code = character.codePointAt(0) ?? 0;
    const { id, advanceWidth } = font.glyphForCodePoint(code);
    return { id, advanceWidth, codePoints: [code] };
  });
  const positions = glyphs.map(({ advanceWidth }) => ({ xAdvance: advanceWidth, yAdvance: 0, xOffset: 0, yOffset: 0 }));
  return {
    glyphs,
    positions,
    // Added up when asked for, as fontkit does: writers scale the positions in place.
    get advanceWidth() {
      return positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
    },
  };
}

/** The font of a style whose own layout is plain: what fontkit spends on the font's shaping rules, which drawings do without, is saved. */
export async function plainFont(style: FontStyle): Promise<Font> {
  const { font } = await openFont(style);
  return Object.create(font, { layout: { value: (text: string) => plainRun(font, text) } }) as Font;
}
