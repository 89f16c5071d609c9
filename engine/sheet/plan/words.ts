import { wrapText } from '../../lettering/index.js';
import type { Item } from '../drawing.js';
import type { Piece } from '../operations/set-blocks.js';
import { house } from '../place/house.js';
import { lettering } from '../place/pieces.js';

export const group = 'operations';

/** A line of a row with the word that it begins with; strong lines are bold. */
export interface Labelled {
  readonly label: string;
  readonly lines: readonly { readonly text: string; readonly strong?: boolean }[];
}

/** Room for the longest label. */
const labelWidth = 23;
const between = 1.2;

/** Lines under each other, each with its label before it. */
export function labelledWords(list: readonly Labelled[], width: number, about: string): Piece {
  const items: Item[] = [];
  let y = 0;
  for (const { label, lines } of list) {
    if (lines.length === 0) continue;
    items.push(lettering(group, 'table', [0, y - house.height], label, { style: 'bold', about }));
    for (const { text, strong } of lines) {
      const style = strong === true ? 'bold' : 'normal';
      for (const line of wrapText(text, house.height, style, width - labelWidth)) {
        items.push(lettering(group, 'table', [labelWidth, y - house.height], line, { style, about }));
        y -= house.linePitch;
      }
    }
    y -= between;
  }
  return { items, height: -y };
}

/** A sentence with a mark before it. */
export function markedSentence(mark: string, text: string, width: number, about: string, strong = false): Piece {
  const indent = 6;
  const style = strong ? 'bold' : 'normal';
  // Bold signs reach further up and down.
  const pitch = house.linePitch + (strong ? 0.5 : 0);
  const lines = wrapText(text, house.height, style, width - indent);
  return {
    items: lines.flatMap((line, i): readonly Item[] => {
      const y = -house.height - i * pitch;
      return [...(i === 0 ? [lettering(group, 'table', [0, y], mark, { about, style })] : []), lettering(group, 'table', [indent, y], line, { about, style })];
    }),
    height: lines.length * pitch,
  };
}
