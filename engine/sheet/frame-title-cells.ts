import { letterHeights, linePitch } from '../../templates/lettering.js';
import { titleFields } from '../../templates/title-block.js';
import { wrapText } from '../lettering/index.js';
import type { Item, LetterStyle } from './drawing.js';
import type { PaperBox } from './frame-box.js';
import { letteringItem } from './frame-items.js';
import { projectionSymbol } from './frame-projection.js';

/** A box of the title block: the room it needs and how it is filled, once its place is known. */
export interface TitleCell {
  readonly width: number;
  /** The least height, mm; a row gives all its boxes the height of the highest. */
  readonly height: number;
  readonly draw: (group: string, box: PaperBox) => readonly Item[];
}

type FieldName = keyof typeof titleFields;

/** Clear room in a box, mm: beside the text, over the caption, from the caption to the text, and under the last base line. */
const room = { side: 1.5, top: 1, caption: 1.6, bottom: 1.5 } as const;

/** A caption in the upper left corner, and where the room under it begins. */
function caption(group: string, name: FieldName, box: PaperBox): { readonly item: Item; readonly below: number } {
  const base = box.top - room.top - letterHeights.caption;
  const item = letteringItem(group, titleFields[name].caption, [box.left + room.side, base], letterHeights.caption, { about: `caption:${name}` });
  return { item, below: base - room.caption };
}

const captionHeight = room.top + letterHeights.caption + room.caption;

/** Height of some lines of text from the first line's top to the last base line. */
const linesHeight = (count: number, height: number): number => height * (1 + (count - 1) * linePitch);

function lettered(group: string, name: FieldName, lines: readonly string[], left: number, top: number, height: number, style: LetterStyle): readonly Item[] {
  return lines.flatMap((line, index) =>
    line === '' ? [] : [letteringItem(group, line, [left, top - height - index * height * linePitch], height, { style, about: `field:${name}` })],
  );
}

/** A caption with text under it, on as many lines as it takes. */
export function textCell(name: FieldName, width: number, text: string, height: number = letterHeights.table): TitleCell {
  const lines = wrapText(text, height, 'normal', width - 2 * room.side);
  return {
    width,
    height: captionHeight + linesHeight(lines.length, height) + room.bottom,
    draw: (group, box) => {
      const { item, below } = caption(group, name, box);
      return [item, ...lettered(group, name, lines, box.left + room.side, below, height, 'normal')];
    },
  };
}

/** The part's name in large letters, and what it belongs to under it. */
export function titleCell(width: number, part: string, supplement: string): TitleCell {
  const { title, table } = letterHeights;
  const across = width - 2 * room.side;
  const names = wrapText(part, title, 'bold', across);
  const further = supplement === '' ? [] : wrapText(supplement, table, 'normal', across);
  const gap = 3;
  const namesHeight = linesHeight(names.length, title);
  return {
    width,
    height: captionHeight + namesHeight + (further.length === 0 ? 0 : gap + linesHeight(further.length, table)) + room.bottom,
    draw: (group, box) => {
      const { item, below } = caption(group, 'part', box);
      const left = box.left + room.side;
      return [
        item,
        ...lettered(group, 'part', names, left, below, title, 'bold'),
        ...lettered(group, 'supplement', further, left, below - namesHeight - gap, table, 'normal'),
      ];
    },
  };
}

/** The hand as one large letter. */
export function handCell(width: number, hand: 'R' | 'L'): TitleCell {
  const height = letterHeights.hand;
  return {
    width,
    height: captionHeight + height + 2 * room.bottom,
    draw: (group, box) => {
      const { item, below } = caption(group, 'hand', box);
      const base = (below + box.bottom - height) / 2;
      const letter = letteringItem(group, hand, [(box.left + box.right) / 2, base], height, { anchor: 'middle', style: 'bold', about: 'field:hand' });
      return [item, letter];
    },
  };
}

/** The symbol of the projection method. */
export function projectionCell(width: number, method: 'third' | 'first'): TitleCell {
  const h = letterHeights.table;
  return {
    width,
    height: captionHeight + 2.8 * h + room.bottom,
    draw: (group, box) => {
      const { item, below } = caption(group, 'projection', box);
      return [item, ...projectionSymbol(group, [(box.left + box.right) / 2, (below + box.bottom) / 2], h, method)];
    },
  };
}
