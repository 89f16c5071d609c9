import { createHash } from 'node:crypto';
import { plainFont, type FontStyle } from '../lettering/index.js';
import type { Drawing } from '../sheet/drawing.js';
import { inkBox } from './ink-box.js';
import type { InkGroup, InkSheet } from './ink.js';
import { addLayers, type PdfInnards } from './pdf-layers.js';
import { pointsPerMm, putInk } from './pdf-ink.js';
import { inkSheet } from './strokes.js';

const styles: readonly FontStyle[] = ['normal', 'bold'];

/** Files bear this date, for the same drawing must give the same bytes; the drawing's own date stands in its title block. */
const creationDate = new Date(Date.UTC(2000, 0, 1));

/**
 * The whole drawing as a PDF file: a page a sheet in true size, real text in an embedded font cut down to what is used, layers by line role,
 * bookmarks for sheets and for the groups on them. The same drawing gives the same bytes; the file's identity follows from its content.
 * Rejects with RangeError for a curve that is not well formed and for text that can't be lettered.
 */
export async function drawingToPdf(drawing: Drawing): Promise<Uint8Array> {
  const sheets = drawing.sheets.map(inkSheet);
  const { default: PdfDocument } = await import('pdfkit');
  const document = new PdfDocument({
    autoFirstPage: false,
    pdfVersion: '1.5',
    displayTitle: true,
    lang: 'en',
    info: {
      Title: drawing.title,
      Subject: drawing.subject,
      Keywords: drawing.keywords.join(', '),
      Creator: 'trialpiece',
      CreationDate: creationDate,
      ...{ ContentHash: createHash('sha256').update(JSON.stringify(drawing)).digest('hex') },
    },
  });
  const bytes = collect(document);
  // pdfkit takes a font that is open already, which its published types leave out.
  for (const style of styles) document.registerFont(style, (await plainFont(style)) as unknown as PDFKit.Mixins.PDFFontSource);
  const innards = document as unknown as PdfInnards;
  const layers = addLayers(innards, new Set(sheets.flatMap((sheet) => sheet.groups.flatMap((group) => group.layers.map((layer) => layer.name)))));
  const chapterOf = chapters(document, innards);
  sheets.forEach((sheet) => {
    const [width, height] = sheet.size;
    document.addPage({ size: [width * pointsPerMm, height * pointsPerMm], margin: 0 });
    layers.openPage();
    bookmark(chapterOf(sheet), innards, sheet);
    document.lineJoin('round').strokeColor('black').fillColor('black');
    for (const group of sheet.groups) {
      for (const layer of group.layers) {
        layers.on(layer.name, () => {
          for (const ink of layer.ink) putInk(document, ink, height);
        });
      }
    }
  });
  document.end();
  return bytes;
}

/** The bytes of a document as they come, whole when it ends. */
function collect(document: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    document.on('end', () => {
      resolve(Buffer.concat(chunks));
    });
    document.on('error', reject);
  });
}

/** A bookmark for the sheet and under it one for each group, which shows the group as large as it fits the reader's window. */
function bookmark(under: PDFKit.PDFOutline, innards: PdfInnards, sheet: InkSheet): void {
  const page = innards.page.dictionary;
  const parent = under.addItem(sheet.title, { expanded: true });
  goTo(parent, [page, 'Fit']);
  for (const group of sheet.groups) goTo(parent.addItem(group.name), [page, 'FitR', ...viewOf(group)]);
}

/** Where the bookmarks of a sheet stand: under one for its chapter, where it has one, which leads to the chapter's first page. */
function chapters(document: PDFKit.PDFDocument, innards: PdfInnards): (sheet: InkSheet) => PDFKit.PDFOutline {
  const made = new Map<string, PDFKit.PDFOutline>();
  return ({ chapter }) => {
    if (chapter === undefined) return document.outline;
    const known = made.get(chapter);
    if (known !== undefined) return known;
    const item = document.outline.addItem(chapter, { expanded: false });
    goTo(item, [innards.page.dictionary, 'Fit']);
    made.set(chapter, item);
    return item;
  };
}

/** Sets where a bookmark leads, which pdfkit would leave at the page's edge. */
function goTo(item: PDFKit.PDFOutline, destination: readonly unknown[]): void {
  (item as unknown as { outlineData: Record<string, unknown> }).outlineData['Dest'] = destination;
}

/** The group's box with a margin, in points from the page's lower left: left, bottom, right, top. */
function viewOf(group: InkGroup): readonly number[] {
  const { left, bottom, right, top } = inkBox(group.layers.flatMap((layer) => layer.ink));
  const margin = 5;
  return [left - margin, bottom - margin, right + margin, top + margin].map((each) => each * pointsPerMm);
}
