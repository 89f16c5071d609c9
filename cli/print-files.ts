import type { Drawing } from '../engine/sheet/drawing.js';
import type { NamedFile } from './write-files.js';

export const FORMATS = ['svg', 'pdf'] as const;
export type Format = (typeof FORMATS)[number];

/** A print of one hand. */
export interface Print {
  readonly drawing: Drawing;
  readonly record: unknown;
  /** Name of its files without ending. */
  readonly fileStem: string;
}

/** The files of some prints, each: an SVG a sheet, one PDF, and the record. */
export async function filesOf(prints: readonly Print[], formats: readonly Format[]): Promise<readonly NamedFile[]> {
  const files: NamedFile[] = [];
  for (const print of prints) files.push(...(await filesOfOne(print, formats)));
  return files;
}

async function filesOfOne({ drawing, record, fileStem }: Print, formats: readonly Format[]): Promise<readonly NamedFile[]> {
  const files: NamedFile[] = [];
  if (formats.includes('svg')) {
    const { drawingToSvg } = await import('../engine/export/svg.js');
    for (const [index, sheet] of drawing.sheets.entries()) {
      const page = drawing.sheets.length === 1 ? '' : `-${String(index + 1)}`;
      files.push({ name: `${fileStem}${page}.svg`, content: await drawingToSvg(sheet, drawing), sheetOf: fileStem });
    }
  }
  if (formats.includes('pdf')) {
    const { drawingToPdf } = await import('../engine/export/pdf.js');
    files.push({ name: `${fileStem}.pdf`, content: await drawingToPdf(drawing) });
  }
  return [...files, { name: `${fileStem}.json`, content: recordText(record) }];
}

export const recordText = (record: unknown): string => `${JSON.stringify(record, null, 2)}\n`;

/** A print of one hand as it is written: its files, and its record. */
export interface PrintedHand {
  readonly record: unknown;
  readonly files: readonly NamedFile[];
}

export const printedHand = async (print: Print, formats: readonly Format[]): Promise<PrintedHand> => ({
  record: print.record,
  files: await filesOf([print], formats),
});
