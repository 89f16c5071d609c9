import type { Drawing } from '../engine/sheet/drawing.js';
import type { PartGenerator } from '../engine/part/generator.js';
import { resolveValues } from '../engine/part/resolve.js';
import type { NamedFile } from './write-files.js';

export const FORMATS = ['svg', 'pdf'] as const;
export type Format = (typeof FORMATS)[number];

/** What a user may ask of a print; what is left out follows from the part. */
export interface PrintChoices {
  readonly settings: Readonly<Record<string, string>>;
  readonly hand: 'right' | 'left' | 'both';
  readonly units: 'in' | 'mm' | undefined;
  readonly paper: string | undefined;
  readonly scale: string | undefined;
  readonly angle: 'third' | 'first';
}

/** A print of one hand. */
export interface Print {
  readonly drawing: Drawing;
  readonly record: unknown;
  /** Name of its files without ending. */
  readonly fileStem: string;
}

/** The prints of a part, one a hand. The engine is loaded only now: most commands do without it. */
export async function printPart(generator: PartGenerator, choices: PrintChoices): Promise<readonly Print[]> {
  const { settings, ...asked } = choices;
  const values = resolveValues(generator, settings, choices.units);
  const { makePrint } = await import('../engine/sheet/make-print.js');
  return makePrint({ generator, values, ...asked });
}

/** The files of a print: an SVG a sheet, one PDF, and the record. */
export async function filesOf({ drawing, record, fileStem }: Print, formats: readonly Format[]): Promise<readonly NamedFile[]> {
  const files: NamedFile[] = [];
  if (formats.includes('svg')) {
    const { renderSvg } = await import('../engine/export/svg.js');
    drawing.sheets.forEach((_, index) => {
      const page = drawing.sheets.length === 1 ? '' : `-${String(index + 1)}`;
      files.push({ name: `${fileStem}${page}.svg`, content: renderSvg(drawing, index) });
    });
  }
  if (formats.includes('pdf')) {
    const { renderPdf } = await import('../engine/export/pdf.js');
    files.push({ name: `${fileStem}.pdf`, content: await renderPdf(drawing) });
  }
  return [...files, { name: `${fileStem}.json`, content: recordText(record) }];
}

export const recordText = (record: unknown): string => `${JSON.stringify(record, null, 2)}\n`;
