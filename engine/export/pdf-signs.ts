/** Letters of the font that stand unseen for signs that it lacks. No drawing letters them. */
const standIns: Readonly<Record<string, string>> = { '\u2334': '\u2423', '\u2335': '\u2304' };

/** The members of pdfkit's current font that its published types leave out. */
interface PdfFont {
  readonly _font: {
    /** The glyph numbers of a text, as four hexadecimal figures each. */
    encode(text: string): readonly [readonly string[], unknown];
    /** The characters for which each glyph of the file stands when a reader copies it. */
    readonly unicode: (readonly number[])[];
  };
}

/** A letter of the current font that reads as the sign when it is copied or searched: the sign itself where the font has it. */
export function standIn(document: PDFKit.PDFDocument, sign: string): string {
  const letter = standIns[sign];
  if (letter === undefined) return sign;
  const { _font: font } = document as unknown as PdfFont;
  const [[glyph = '0']] = font.encode(letter);
  font.unicode[Number.parseInt(glyph, 16)] = [sign.codePointAt(0) ?? 0];
  return letter;
}
