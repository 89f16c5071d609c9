import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measureText, textCorners, wrapText } from '../../engine/lettering/index.js';

const widthOf = (text: string): number => measureText(text, 3.5, 'normal').width;

describe('wrapText', () => {
  it('keeps every letter, in order, and no line is wider than asked', () => {
    const word = fc.string({ unit: fc.constantFrom(...'abcWMi19-/'), minLength: 1, maxLength: 14 });
    fc.assert(
      fc.property(fc.array(word, { maxLength: 12 }), fc.double({ min: 8, max: 60, noNaN: true }), (words, width) => {
        const lines = wrapText(words.join(' '), 3.5, 'normal', width);
        expect(lines.join('').replaceAll(' ', '')).toBe(words.join(''));
        for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(width + 1e-6);
      }),
      { seed: 20, numRuns: 200 },
    );
  });

  it('fills each line: the next word would not have fitted', () => {
    const lines = wrapText('bright mild steel flat, 30 by 20, sawn to 45 long', 3.5, 'normal', 40);
    expect(lines.length).toBeGreaterThan(1);
    lines.slice(1).forEach((line, index) => {
      expect(widthOf(`${lines[index]} ${line.split(' ')[0]}`)).toBeGreaterThan(40);
    });
  });

  it('keeps line breaks and blank lines', () => {
    expect(wrapText('one\n\ntwo', 3.5, 'normal', 40)).toEqual(['one', '', 'two']);
  });

  it('refuses a width that holds no letter', () => {
    expect(() => wrapText('W', 3.5, 'normal', 1)).toThrow(new RangeError('"W" does not fit in a width of 1 mm'));
  });
});

describe('textCorners', () => {
  const placed = { text: '⌀12.5', at: [100, 50], height: 3.5, style: 'normal' } as const;
  const { width, ascent, descent } = measureText(placed.text, 3.5, 'normal');

  it('stand about the anchor', () => {
    const [lowerLeft, , upperRight] = textCorners({ ...placed, angle: 0, anchor: 'middle' });
    expect(lowerLeft[0]).toBeCloseTo(100 - width / 2, 9);
    expect(lowerLeft[1]).toBeCloseTo(50 - descent, 9);
    expect(upperRight[0]).toBeCloseTo(100 + width / 2, 9);
    expect(upperRight[1]).toBeCloseTo(50 + ascent, 9);
  });

  it('turn with the text: read from the right, the letters rise to the left', () => {
    const [lowerLeft, , upperRight] = textCorners({ ...placed, angle: 90, anchor: 'left' });
    expect(lowerLeft[0]).toBeCloseTo(100 + descent, 9);
    expect(lowerLeft[1]).toBeCloseTo(50, 9);
    expect(upperRight[0]).toBeCloseTo(100 - ascent, 9);
    expect(upperRight[1]).toBeCloseTo(50 + width, 9);
  });
});
