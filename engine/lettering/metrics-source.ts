import { fontFiles, type FontStyle } from './font.js';
import { fontPath } from './font-path.js';

/** The characters that drawings may use: Latin, Greek, Cyrillic, punctuation, fractions, arrows, mathematics, technical and geometric signs. */
const ranges: readonly (readonly [number, number])[] = [
  [0x20, 0x7e],
  [0xa0, 0x17f],
  [0x370, 0x3ff],
  [0x400, 0x45f],
  [0x2010, 0x2044],
  [0x2070, 0x209f],
  [0x20a0, 0x20bf],
  [0x2100, 0x2126],
  [0x2150, 0x215f],
  [0x2190, 0x21ff],
  [0x2200, 0x22ff],
  [0x2300, 0x23ff],
  [0x25a0, 0x25ff],
];

/** The TypeScript text of a metrics module, read from the font file itself. */
export async function metricsSource(style: FontStyle): Promise<string> {
  const { openSync } = await import('fontkit');
  const font = openSync(fontPath(style));
  const blocks = ranges.map(([first, last]) => {
    const entries: string[] = [];
    for (let code = first; code <= last; code += 1) {
      if (!font.hasGlyphForCodePoint(code)) {
        entries.push('-');
        continue;
      }
      const glyph = font.glyphForCodePoint(code);
      const { minY, maxY } = glyph.bbox;
      const inked = Number.isFinite(minY) && Number.isFinite(maxY);
      entries.push(`${glyph.advanceWidth} ${inked ? minY : 0} ${inked ? maxY : 0}`);
    }
    return `    [0x${first.toString(16)}, '${entries.join(',')}'],`;
  });
  const stem = font.glyphForCodePoint('l'.codePointAt(0) ?? 0).bbox;
  return [
    `import type { FontMetrics } from './font.js';`,
    '',
    `/** Measures of ${fontFiles[style]}; written by write-metrics.ts, not by hand. */`,
    `export const metrics: FontMetrics = {`,
    `  unitsPerEm: ${font.unitsPerEm},`,
    `  capitalHeight: ${font.glyphForCodePoint('H'.codePointAt(0) ?? 0).bbox.maxY},`,
    `  stem: ${stem.maxX - stem.minX},`,
    `  blocks: [`,
    ...blocks,
    `  ],`,
    `};`,
    '',
  ].join('\n');
}
