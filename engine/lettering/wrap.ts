import type { FontStyle } from './font.js';
import { measureText } from './layout.js';

/**
 * Breaks text into lines no wider than `width` mm, at spaces; a word wider than a line is broken between letters. Line breaks in the
 * text are kept. Throws RangeError if not even one letter fits, and as measureText does.
 */
export function wrapText(text: string, height: number, style: FontStyle, width: number): readonly string[] {
  const fits = (line: string): boolean => measureText(line, height, style).width <= width + 1e-9;
  return text.split('\n').flatMap((paragraph) => {
    const lines: string[] = [];
    let line = '';
    for (const word of paragraph.split(' ').filter((part) => part !== '')) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (fits(longer)) {
        line = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      const pieces = breakWord(word, fits, width);
      lines.push(...pieces.slice(0, -1));
      line = pieces.at(-1) ?? '';
    }
    return [...lines, line];
  });
}

function breakWord(word: string, fits: (line: string) => boolean, width: number): readonly string[] {
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
