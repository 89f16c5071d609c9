import type { FontMetrics, FontStyle, Glyph } from './font.js';
import { metrics as bold } from './metrics-bold.js';
import { metrics as normal } from './metrics-normal.js';
import { signs } from './signs.js';

const fonts: Readonly<Record<FontStyle, FontMetrics>> = { normal, bold };

/** The font's measures and its characters by code point, read from the packed table when first asked for. */
interface ReadFont {
  readonly metrics: FontMetrics;
  readonly glyphs: ReadonlyMap<number, Glyph>;
}

function readFont(metrics: FontMetrics): ReadFont {
  const glyphs = new Map<number, Glyph>();
  for (const [first, packed] of metrics.blocks) {
    packed.split(',').forEach((entry, index) => {
      const [advance, bottom, top] = entry.split(' ').map(Number);
      if (advance === undefined || bottom === undefined || top === undefined) return;
      glyphs.set(first + index, { advance, bottom, top });
    });
  }
  return { metrics, glyphs };
}

const read = new Map<FontStyle, ReadFont>();

function fontOf(style: FontStyle): ReadFont {
  const known = read.get(style);
  if (known) return known;
  const font = readFont(fonts[style]);
  read.set(style, font);
  return font;
}

/** The font size (em, mm) at which a capital letter is `height` mm high. */
export function fontSize(height: number, style: FontStyle): number {
  const { unitsPerEm, capitalHeight } = fonts[style];
  return (height * unitsPerEm) / capitalHeight;
}

/** Millimetres per font unit at a capital height of `height` mm. */
export function unitSize(height: number, style: FontStyle): number {
  return height / fonts[style].capitalHeight;
}

/** The characters of `text` that can't be lettered: neither a sign of ours nor in the font. Each is named once. */
export function missingCharacters(text: string, style: FontStyle): readonly string[] {
  const { glyphs } = fontOf(style);
  return [...new Set(text)].filter((character) => !signs.has(character) && !glyphs.has(character.codePointAt(0) ?? -1));
}

/** The measures of one character, font units. Throws RangeError if the font has none. */
export function glyphOf(character: string, style: FontStyle): Glyph {
  const code = character.codePointAt(0) ?? -1;
  const glyph = fontOf(style).glyphs.get(code);
  if (glyph) return glyph;
  const name = `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
  throw new RangeError(`the lettering has no character ${name} ("${character}")`);
}
