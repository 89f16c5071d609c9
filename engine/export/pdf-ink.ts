import { add2, type Vector2 } from '../geometry/vector.js';
import { turn2 } from '../lettering/index.js';
import { penPath } from './beziers.js';
import { decimal } from './decimal.js';
import type { Ink, InkFill, InkStroke, InkText } from './ink.js';
import { standIn } from './pdf-signs.js';

/** Points of the printer's measure (1/72 in) to the millimetre. */
export const pointsPerMm = 72 / 25.4;

/** Draws ink on the page of a document whose height is `height` mm; pdfkit counts from the top left. */
export function putInk(document: PDFKit.PDFDocument, ink: Ink, height: number): void {
  switch (ink.kind) {
    case 'stroke':
      putStroke(document, ink, height);
      break;
    case 'fill':
      putFill(document, ink, height);
      break;
    case 'text':
      putText(document, ink, height);
      break;
  }
}

const toPage = ([x, y]: Vector2, height: number): [number, number] => [x * pointsPerMm, (height - y) * pointsPerMm];

function putStroke(document: PDFKit.PDFDocument, ink: InkStroke, height: number): void {
  document.lineWidth(ink.width * pointsPerMm).lineCap(ink.ends === 'round' ? 'round' : 'butt');
  for (const curve of ink.curves) {
    const { start, moves } = penPath(curve);
    document.moveTo(...toPage(start, height));
    for (const [first, second, end] of moves) {
      if (second === undefined || end === undefined) document.lineTo(...toPage(first, height));
      else document.bezierCurveTo(...toPage(first, height), ...toPage(second, height), ...toPage(end, height));
    }
  }
  document.stroke();
}

function putFill(document: PDFKit.PDFDocument, { shape }: InkFill, height: number): void {
  if (shape.kind === 'disc') {
    document.circle(...toPage(shape.centre, height), shape.radius * pointsPerMm).fill();
    return;
  }
  shape.points.forEach((corner, index) => {
    if (index === 0) document.moveTo(...toPage(corner, height));
    else document.lineTo(...toPage(corner, height));
  });
  document.closePath().fill();
}

/** Letters in pieces, each where it was measured to be. Signs are drawn, and stand among the letters unseen for search and copying. */
function putText(document: PDFKit.PDFDocument, ink: InkText, height: number): void {
  document.font(ink.style).fontSize(ink.size * pointsPerMm);
  for (const { text, x } of ink.letters) putLetters(document, ink, text, x, height);
  if (ink.signs.length > 0) {
    document.save();
    document.addContent('3 Tr');
    for (const { text, x, width } of ink.signs) {
      const letter = standIn(document, text);
      // As wide as the sign, or readers of the file would see a space beside it.
      const stretch = (100 * width * pointsPerMm) / document.widthOfString(letter);
      document.addContent(`${decimal(stretch, 2)} Tz`);
      putLetters(document, ink, letter, x, height);
    }
    document.restore();
  }
  for (const stroke of ink.strokes) putStroke(document, stroke, height);
}

/** Sets letters `x` mm along the base line of a line of text. */
function putLetters(document: PDFKit.PDFDocument, ink: InkText, text: string, x: number, height: number): void {
  const [left, base] = toPage(add2(ink.origin, turn2([x, 0], ink.angle)), height);
  document.save();
  if (ink.angle !== 0) document.rotate(-ink.angle, { origin: [left, base] });
  document.text(text, left, base, { lineBreak: false, baseline: 'alphabetic' });
  document.restore();
}
