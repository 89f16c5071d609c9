import { getDocument, OPS, type PDFDocumentProxy, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

export type Point = readonly [number, number];

/** A line of text as a reader finds it: its left end and font size in mm from the page's lower left, turn in degrees. */
export interface ReadText {
  readonly text: string;
  readonly at: Point;
  readonly size: number;
  readonly angle: number;
  readonly width: number;
}

/** A straight stroke, mm from the page's lower left. */
export interface ReadLine {
  readonly from: Point;
  readonly to: Point;
  readonly width: number;
}

const mm = 25.4 / 72;

/** Opens a PDF file with a reader that is not the writer's. */
export async function openPdf(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  return getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
}

/** All text of a page that is not blank. */
export async function textsOf(page: PDFPageProxy): Promise<readonly ReadText[]> {
  const { items } = await page.getTextContent();
  return items.flatMap((item) => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [a, b, , , x, y] = item.transform as number[];
    if (a === undefined || b === undefined || x === undefined || y === undefined) throw new Error('a transform has six numbers');
    return [{ text: item.str, at: [x * mm, y * mm] as const, size: Math.hypot(a, b) * mm, angle: (Math.atan2(b, a) * 180) / Math.PI, width: item.width * mm }];
  });
}

type Matrix = readonly [number, number, number, number, number, number];

const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];

/** Every straight stroke of a page, in the order in which they are drawn. */
export async function linesOf(page: PDFPageProxy): Promise<readonly ReadLine[]> {
  const { fnArray, argsArray } = await page.getOperatorList();
  const lines: ReadLine[] = [];
  const saved: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let width = 1;
  fnArray.forEach((operator, index) => {
    const values = argsArray[index] as unknown[];
    if (operator === OPS.save) saved.push(matrix);
    else if (operator === OPS.restore) matrix = saved.pop() ?? matrix;
    else if (operator === OPS.transform) matrix = times(matrix, values as unknown as Matrix);
    else if (operator === OPS.setLineWidth) width = (values[0] as number) * mm;
    else if (operator === OPS.constructPath && values[0] === OPS.stroke) {
      lines.push(...straightStrokes((values[1] as [Float32Array])[0], matrix).map(([from, to]) => ({ from, to, width })));
    }
  });
  return lines;
}

/** Path codes of the reader: 0 begins, 1 goes straight, 2 goes in a Bézier, 4 closes. */
function straightStrokes(path: Float32Array, m: Matrix): readonly (readonly [Point, Point])[] {
  const found: (readonly [Point, Point])[] = [];
  let last: Point = [0, 0];
  for (let at = 0; at < path.length; ) {
    const code = path[at] ?? 4;
    const size = code === 2 ? 6 : code === 4 ? 0 : 2;
    const [x, y] = [path[at + size - 1] ?? 0, path[at + size] ?? 0];
    if (size > 0) {
      const next: Point = [(m[0] * x + m[2] * y + m[4]) * mm, (m[1] * x + m[3] * y + m[5]) * mm];
      if (code === 1) found.push([last, next]);
      last = next;
    }
    at += 1 + size;
  }
  return found;
}
