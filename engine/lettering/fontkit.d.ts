/** The part of fontkit that this project uses; the package brings no types of its own. */
declare module 'fontkit' {
  export interface FontGlyph {
    readonly id: number;
    readonly advanceWidth: number;
    readonly bbox: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number };
  }

  export interface FontSubset {
    /** Takes in a glyph by its number; returns its number in the subset. */
    includeGlyph(glyph: number): number;
    /** The bytes of the subset font, without a character map. */
    encode(): Uint8Array;
  }

  /** A line of text set in a font, font units. */
  export interface GlyphRun {
    readonly glyphs: readonly Pick<FontGlyph, 'id' | 'advanceWidth'>[];
    readonly positions: readonly { readonly xAdvance: number }[];
    readonly advanceWidth: number;
  }

  export interface Font {
    readonly unitsPerEm: number;
    readonly ascent: number;
    readonly descent: number;
    glyphForCodePoint(code: number): FontGlyph;
    hasGlyphForCodePoint(code: number): boolean;
    createSubset(): FontSubset;
    /** Sets a line of text; `features` turns the font's shaping rules on and off. */
    layout(text: string, features?: Readonly<Record<string, boolean>>): GlyphRun;
  }

  export function openSync(path: string): Font;

  export function create(bytes: Uint8Array): Font;
}
