/** The two weights of lettering that a drawing uses. */
export type FontStyle = 'normal' | 'bold';

/** What layout needs to know of one character, in font units: its advance, and how far its ink goes above and below the base line. */
export interface Glyph {
  readonly advance: number;
  /** Highest point of the ink above the base line; 0 for a space. */
  readonly top: number;
  /** Lowest point of the ink above the base line: negative for a letter that hangs below it. */
  readonly bottom: number;
}

/** The measures of one font file, as written by write-metrics. Each block is a first code point and then `advance bottom top` per character; `-` stands where the font has none. */
export interface FontMetrics {
  readonly unitsPerEm: number;
  /** Height of the letter H: the fonts' own OS/2 table is too old to hold a capital height. */
  readonly capitalHeight: number;
  /** Thickness of the stem of the letter l. */
  readonly stem: number;
  readonly blocks: readonly (readonly [number, string])[];
}

/**
 * Lettering is DejaVu Sans Condensed: free to use, embed and pass on (Bitstream Vera licence; the DejaVu changes are in the public
 * domain; some letters under the like Arev licence; the text is in the package dejavu-fonts-ttf). The fonts must not be sold by
 * themselves, and a changed font must not bear the names "Bitstream" or "Vera".
 */
export const fontFiles: Readonly<Record<FontStyle, string>> = {
  normal: 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf',
  bold: 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf',
};

/** Family name under which both weights stand in an output file. */
export const fontFamily = 'DejaVu Sans Condensed';
