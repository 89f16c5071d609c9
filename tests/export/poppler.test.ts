import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawingToPdf } from '../../engine/export/pdf.js';
import { knownLine, sampleDrawing } from './sample.js';

const present = (program: string): boolean => spawnSync(program, ['-v']).error === undefined;
const pixelsPerMm = 300 / 25.4;

/** A grey picture as pdftoppm writes it: width, height and a byte a pixel, rows from the top. */
function readGrey(path: string): { width: number; height: number; at: (x: number, y: number) => number } {
  const bytes = readFileSync(path);
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'));
  if (!head) throw new Error('a grey picture');
  const [width, height] = [Number(head[1]), Number(head[2])];
  return { width, height, at: (x, y) => bytes[head[0].length + y * width + x] ?? 255 };
}

describe('a PDF in a second reader', () => {
  const folder = mkdtempSync(join(tmpdir(), 'print-'));
  const file = join(folder, 'sample.pdf');
  beforeAll(async () => {
    writeFileSync(file, await drawingToPdf(sampleDrawing()));
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it.skipIf(!present('pdffonts'))('has two fonts, both embedded, cut down and readable as text (needs pdffonts)', () => {
    const rows = execFileSync('pdffonts', [file], { encoding: 'utf8' }).trim().split('\n').slice(2);
    expect(rows).toHaveLength(2);
    for (const row of rows) expect(row).toMatch(/DejaVuSansCondensed\S*\s+CID TrueType\s+Identity-H\s+yes yes yes/);
  });

  it.skipIf(!present('pdftotext'))('gives whole callouts, signs included (needs pdftotext)', () => {
    const words = execFileSync('pdftotext', ['-f', '1', '-l', '1', file, '-'], { encoding: 'utf8' });
    expect(words).toContain('4× ⌀5.5 H8 (+0.018/0) ↧12');
    expect(words).toContain('⌴ ⌀9 ↧4 ⌵ ⌀11 × 90°');
  });

  it.skipIf(!present('pdftoppm'))('draws the known line 100 mm long, to 0.1 mm (needs pdftoppm)', () => {
    execFileSync('pdftoppm', ['-r', '300', '-gray', '-f', '1', '-l', '1', '-singlefile', file, join(folder, 'page')]);
    const picture = readGrey(join(folder, 'page.pgm'));
    // Just under the line the extension lines at its ends are the only ink: measure between their middles.
    const row = Math.round((297 - knownLine.from[1] + 2) * pixelsPerMm);
    const inked = Array.from({ length: Math.round(150 * pixelsPerMm) }, (_, x) => x + Math.round(30 * pixelsPerMm)).filter((x) => picture.at(x, row) < 128);
    const middle = (xs: readonly number[]): number => xs.reduce((sum, x) => sum + x, 0) / xs.length;
    const half = 90 * pixelsPerMm;
    const length = (middle(inked.filter((x) => x > half)) - middle(inked.filter((x) => x < half))) / pixelsPerMm;
    expect(Math.abs(length - 100)).toBeLessThan(0.1);
  });
});
