import type { DrawingSheet } from '../drawing.js';
import { lettering } from '../place/pieces.js';

/** Sheets that were bound before lose the page number that they had. */
const group = 'page number';

const height = 2.5;
/** The line of lettering stands so far over the paper's lower edge, under the frame, mm. */
const over = 3.6;
/** Clear of the edge and of the middle, where the frame has its centring mark, mm. */
const fromRight = 12;

/** All sheets one after another, each with its page number under the frame and the document that it belongs to. */
export function bound(documents: readonly { readonly name: string; readonly sheets: readonly DrawingSheet[] }[]): readonly DrawingSheet[] {
  const total = documents.reduce((sum, { sheets }) => sum + sheets.length, 0);
  let page = 0;
  return documents.flatMap(({ name, sheets }) =>
    sheets.map((sheet): DrawingSheet => {
      page += 1;
      const line = lettering(group, 'note', [sheet.size[0] - fromRight, over], `${name}: page ${page} of ${total}`, { height, anchor: 'right' });
      return { ...sheet, chapter: name, items: [...sheet.items.filter((item) => item.group !== group), line] };
    }),
  );
}
