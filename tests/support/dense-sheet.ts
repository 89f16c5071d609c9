import type { DrawingSheet, Item } from '../../engine/sheet/drawing.js';
import { circle, line, sheetOf, stroke, text } from '../export/sample.js';

/** An A3 sheet as full as a print gets: 2000 hatch lines, 400 outlines, 300 hidden and 200 centre lines, 400 lines of text. */
export function denseSheet(): DrawingSheet {
  const grid = (count: number, make: (x: number, y: number, index: number) => Item): Item[] =>
    Array.from({ length: count }, (_, index) => make(25 + (index % 50) * 7.2, 90 + Math.floor(index / 50) * 4.7, index));
  return sheetOf('A3', 'landscape', [
    ...grid(2000, (x, y) => stroke('hatch', line([x, y], [x + 3, y + 3]))),
    ...grid(400, (x, y, index) => stroke('visible', index % 2 === 0 ? circle([x, y], 3) : line([x, y], [x + 12, y]))),
    ...grid(300, (x, y, index) => stroke('hidden', index % 3 === 0 ? circle([x, y], 6) : line([x, y], [x + 30, y + 5]))),
    ...grid(200, (x, y) => stroke('centre', line([x, y], [x + 60, y]))),
    ...grid(400, (x, y, index) => text(`⌀${(index * 0.35).toFixed(2)} ±0.05`, [x, y])),
  ]);
}
