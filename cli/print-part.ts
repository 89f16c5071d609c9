import type { Drawing } from '../engine/sheet/drawing.js';
import type { PartGenerator } from '../engine/part/generator.js';
import type { Shop } from '../engine/trade/shop/shop.js';
import { resolveValues } from '../engine/part/resolve.js';
import type { NamedFile } from './write-files.js';

export const FORMATS = ['svg', 'pdf'] as const;
export type Format = (typeof FORMATS)[number];

/** What a user may ask of a print; what is left out follows from the part. */
export interface PrintChoices {
  readonly settings: Readonly<Record<string, string>>;
  readonly hand: 'right' | 'left' | 'both';
  readonly units: 'in' | 'mm' | undefined;
  /** Each length in the other unit too, in brackets. */
  readonly secondary: boolean;
  readonly paper: string | undefined;
  readonly scale: string | undefined;
  readonly angle: 'third' | 'first';
  /** What the user's shop has; undefined for a typical small lathe and mill. */
  readonly shop?: Shop | undefined;
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
  const { settings, shop, ...asked } = choices;
  const values = resolveValues(generator, settings, choices.units, shop?.drills);
  const { makePrint } = await import('../engine/sheet/make-print.js');
  return makePrint({ generator, values, ...asked, ...(shop === undefined ? {} : { shop }) });
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
      files.push({ name: `${fileStem}${page}.svg`, content: await drawingToSvg(sheet, drawing) });
    }
  }
  if (formats.includes('pdf')) {
    const { drawingToPdf } = await import('../engine/export/pdf.js');
    files.push({ name: `${fileStem}.pdf`, content: await drawingToPdf(drawing) });
  }
  return [...files, { name: `${fileStem}.json`, content: recordText(record) }];
}

export const recordText = (record: unknown): string => `${JSON.stringify(record, null, 2)}\n`;
