import { wrapText } from '../../lettering/index.js';
import type { Item } from '../drawing.js';
import { house } from '../place/house.js';
import { lettering } from '../place/pieces.js';
import type { Block } from './block.js';

/** Paragraphs under a heading, in a column of a given width. */
export interface NoteGroup {
  readonly heading: string;
  readonly paragraphs: readonly string[];
}

/** Notes and cautions as one block: headings bold, paragraphs numbered, each wrapped to the width. */
export function notesBlock(groups: readonly NoteGroup[], width: number): Block {
  const items: Item[] = [];
  let y = 0;
  for (const { heading, paragraphs } of groups) {
    if (paragraphs.length === 0) continue;
    if (y < 0) y -= 2;
    y -= house.height;
    items.push(lettering('notes', 'note', [0, y], heading, { style: 'bold' }));
    y -= house.linePitch - house.height;
    paragraphs.forEach((paragraph, i) => {
      const indent = 7;
      wrapText(paragraph, house.height, 'normal', width - indent).forEach((line, k) => {
        y -= house.height;
        if (k === 0) items.push(lettering('notes', 'note', [0, y], `${i + 1}`));
        items.push(lettering('notes', 'note', [indent, y], line));
        y -= house.linePitch - house.height;
      });
    });
  }
  return { id: 'notes', items, box: { left: 0, right: width, top: 0, bottom: y } };
}
