import type { FontStyle } from './font.js';
import { widthAfter } from './layout.js';

/**
 * Breaks text into lines no wider than `width` mm, at spaces; a word wider than a line is broken between letters. Line breaks in the
 * text are kept. Throws RangeError if not even one letter fits, and as measureText does.
 */
export function wrapText(text: string, height: number, style: FontStyle, width: number): readonly string[] {
  if (!(height > 0)) throw new RangeError(`lettering must have a positive height, not ${height}`);
  const most = width + 1e-9;
  const fits = (line: string): boolean => widthAfter(0, line, height, style) <= most;
  return text.split('\n').flatMap((paragraph) => {
    const lines: string[] = [];
    let line = '';
    // How far the line reaches: only what is added to it is measured.
    let filled = 0;
    for (const word of paragraph.split(' ').filter((part) => part !== '')) {
      const added = line === '' ? word : ` ${word}`;
      const longer = widthAfter(filled, added, height, style);
      if (longer <= most) {
        line += added;
        filled = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      const pieces = breakWord(word, fits, width);
      lines.push(...pieces.slice(0, -1));
      line = pieces.at(-1) ?? '';
      filled = widthAfter(0, line, height, style);
    }
    return [...lines, line];
  });
}

function breakWord(word: string, fits: (line: string) => boolean, width: number): readonly string[] {
  if (fits(word)) return [word];
  const pieces: string[] = [];
  let piece = '';
  for (const character of word) {
    if (!fits(character)) throw new RangeError(`"${character}" does not fit in a width of ${width} mm`);
    if (fits(piece + character)) {
      piece += character;
    } else {
      pieces.push(piece);
      piece = character;
    }
  }
  return [...pieces, piece];
}
