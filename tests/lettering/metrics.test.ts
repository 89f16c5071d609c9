import { readFile } from 'node:fs/promises';
import { openSync } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { fontSize, measureText, missingCharacters, type FontStyle } from '../../engine/lettering/index.js';
import { fontPath } from '../../engine/lettering/font-path.js';
import { metricsSource } from '../../engine/lettering/metrics-source.js';

const styles: readonly FontStyle[] = ['normal', 'bold'];

describe.each(styles)('measures of the %s font', (style) => {
  it('are those of the font file', async () => {
    const kept = await readFile(new URL(`../../engine/lettering/metrics-${style}.ts`, import.meta.url), 'utf8');
    expect(kept).toBe(await metricsSource(style));
  });

  it('add up to the advances that the font file gives, character by character', () => {
    const font = openSync(fontPath(style));
    const text = 'Crosshead 12.5 ±0.1 × 45° (AV To fi) M5 Ra 1.6 µm ≤ ½ Ω';
    const advances = [...text].map((character) => font.glyphForCodePoint(character.codePointAt(0) ?? 0).advanceWidth);
    const units = advances.reduce((sum, each) => sum + each, 0);
    const height = 3.5;
    expect(measureText(text, height, style).width).toBeCloseTo((units / font.unitsPerEm) * fontSize(height, style), 9);
  });

  it('make a capital letter as high as asked', () => {
    const { ascent, descent } = measureText('EHT', 3.5, style);
    expect(ascent).toBeCloseTo(3.5, 9);
    expect(descent).toBe(0);
  });

  it('give all figures one width', () => {
    const widths = new Set([...'0123456789'].map((figure) => measureText(figure, 3.5, style).width));
    expect(widths.size).toBe(1);
  });

  it('have the characters of a drawing', () => {
    expect(missingCharacters('0123456789.,+-±×°()/:"\'ABCXYZabcxyz⌀⌴⌵↧−²µ≤≥½¼¾⅛□', style)).toEqual([]);
  });

  it('tell what they lack', () => {
    expect(missingCharacters('a漢b漢', style)).toEqual(['漢']);
    expect(() => measureText('a漢b', 3.5, style)).toThrow(new RangeError('the lettering has no character U+6F22 ("漢")'));
  });
});

describe('measureText', () => {
  it('measures what hangs below the base line', () => {
    const plain = measureText('12.5', 3.5, 'normal');
    const bracketed = measureText('(12.5)', 3.5, 'normal');
    expect(plain.descent).toBeLessThan(0.1);
    expect(bracketed.descent).toBeGreaterThan(0.5);
  });

  it('is nothing for no text', () => {
    expect(measureText('', 3.5, 'normal')).toEqual({ width: 0, ascent: 0, descent: 0 });
  });

  it.each([0, -1, Number.NaN])('refuses a height of %s', (height) => {
    expect(() => measureText('1', height, 'normal')).toThrow(RangeError);
  });
});
