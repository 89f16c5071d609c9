import { fontFamily, type FontStyle } from './font.js';
import { openFont } from './open-font.js';
import { characterMap, nameTable, postTable } from './subset-tables.js';
import { readTables, writeTables } from './sfnt.js';
import { signs } from './signs.js';

/**
 * A TrueType font with no more than the given characters, to be embedded in a file. Our own signs, which are drawn as strokes, are mapped to
 * the blank of a space, so that a line of text may hold them as characters. It has no kerning and no ligatures: letters stand as measured.
 * Throws RangeError for a character that the font lacks.
 */
export async function subsetFont(style: FontStyle, characters: Iterable<string>): Promise<Uint8Array> {
  const { font, os2 } = await openFont(style);
  const subset = font.createSubset();
  const glyphs = new Map<number, number>();
  const codes = new Set([...characters].map((character) => character.codePointAt(0) ?? 0));
  for (const code of [...codes].sort((a, b) => a - b)) {
    const source = signs.has(String.fromCodePoint(code)) ? 0x20 : code;
    if (!font.hasGlyphForCodePoint(source)) throw new RangeError(`the font has no character U+${code.toString(16).toUpperCase()}`);
    glyphs.set(code, subset.includeGlyph(font.glyphForCodePoint(source).id));
  }
  const tables = new Map(readTables(subset.encode()));
  if (os2) tables.set('OS/2', os2);
  tables.set('cmap', characterMap(glyphs));
  tables.set('name', nameTable(fontFamily, style === 'bold' ? 'Bold' : 'Regular'));
  tables.set('post', postTable());
  return writeTables(tables);
}
