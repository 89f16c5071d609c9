import { bench, describe } from 'vitest';
import { drawingToPdf } from '../../engine/export/pdf.js';
import { inkSheet } from '../../engine/export/strokes.js';
import { drawingToSvg } from '../../engine/export/svg.js';
import { measureText } from '../../engine/lettering/index.js';
import { denseSheet } from '../support/dense-sheet.js';

const sheet = denseSheet();
const drawing = { title: 'Dense', subject: 'A full sheet', keywords: [], sheets: [sheet] };
// Loads the libraries, and tells what is written, so that a faster writer of something else is seen.
const [svg, pdf] = [await drawingToSvg(sheet, drawing), await drawingToPdf(drawing)];

describe(`a full A3 sheet of ${sheet.items.length} items: SVG of ${svg.length} letters, PDF of ${pdf.length} bytes`, () => {
  bench('ink', () => {
    inkSheet(sheet);
  });
  bench('SVG', async () => {
    await drawingToSvg(sheet, drawing);
  });
  bench('PDF', async () => {
    await drawingToPdf(drawing);
  });
});

describe('lettering', () => {
  bench('measure a callout', () => {
    measureText('4× ⌀5.5 H8 (+0.018/0) ↧12', 3.5, 'normal');
  });
});
