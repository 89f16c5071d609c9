import { papers } from '../../../templates/papers/index.js';
import type { Orientation, Paper } from '../../../templates/paper.js';
import type { Part } from '../../part/part.js';
import { finishSheet, footOn } from '../compose/sheets.js';
import { titleOf } from '../compose/title.js';
import type { DrawingSheet } from '../drawing.js';
import { columnsOn } from '../operations/columns.js';
import { papersFor, speechFor, type PrintWishes } from '../print-wishes.js';
import type { PageSection } from './page-section.js';
import { pageSheets } from './page-sheets.js';

/** The paper of sheets of words: that asked for, else the smallest. */
const paperOf = (asked: PrintWishes): Paper => papersFor(asked)?.[0] ?? papers[0]!;

/** Sheets of words and tables of a part, which are of both its hands. @param first number of the first sheet, where others of the same document go before. */
export function wordSheets(part: Part, asked: PrintWishes, documentType: string, sections: readonly PageSection[], handed: boolean, first = 1): readonly DrawingSheet[] {
  const speech = speechFor(asked, part);
  const paper = paperOf(asked);
  const upright: Orientation = paper.orientations.includes('portrait') ? 'portrait' : paper.orientations[0]!;
  // No letter in their title block says one hand.
  const named = { ...titleOf(part, speech, { handed: false, scale: 'none', paper, angle: asked.angle }), quantity: titleOf(part, speech, { handed, scale: 'none', paper, angle: asked.angle }).quantity };
  const titled = (sheet: number, sheets: number) => ({ ...named, documentType, sheet, sheets });
  const columns = columnsOn(paper, upright, footOn(paper, upright, titled(10, 10), speech.unit, 'following').taken);
  const flowed = pageSheets(sections, speech, columns);
  const last = flowed.length + first - 1;
  return flowed.map(({ items }, i) => finishSheet(paper, upright, titled(i + first, last), speech.unit, 'following', `${part.title}: ${documentType}, sheet ${i + first} of ${last}`, items));
}
