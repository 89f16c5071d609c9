import { letterHeights, linePitch } from '../../templates/lettering.js';
import { titleFields } from '../../templates/title-block.js';
import { measureText, wrapText } from '../lettering/index.js';
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
const room = { side: 1.5, top: 0.7, caption: 1.2, bottom: 1.5 } as const;
/** Clear room between a name and what it belongs to, under it and beside it. */
const apart = { under: 1.9, beside: 4 } as const;

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

/** The width, mm, in which the caption and the text each stand on one line. */
export const cellWidth = (name: FieldName, text: string): number =>
  2 * room.side + Math.max(measureText(titleFields[name].caption, letterHeights.caption, 'normal').width, measureText(text, letterHeights.table, 'normal').width) + 0.1;

/** From the last base line of a name to the top of what stands under it: clear of letters that reach below the line. */
const belowName = (names: readonly string[]): number =>
  Math.max(apart.under, measureText(names[names.length - 1]!, letterHeights.title, 'bold').descent + 0.7);

/** The part's name in large letters, and what it belongs to under it. */
export function titleCell(width: number, part: string, supplement: string): TitleCell {
  const { title, table } = letterHeights;
  const across = width - 2 * room.side;
  const names = wrapText(part, title, 'bold', across);
  const further = supplement === '' ? [] : wrapText(supplement, table, 'normal', across);
  const namesHeight = linesHeight(names.length, title);
  return {
    width,
    height: captionHeight + namesHeight + (further.length === 0 ? 0 : belowName(names) + linesHeight(further.length, table)) + room.bottom,
    draw: (group, box) => {
      const { item, below } = caption(group, 'part', box);
      const left = box.left + room.side;
      return [
        item,
        ...lettered(group, 'part', names, left, below, title, 'bold'),
        ...lettered(group, 'supplement', further, left, below - namesHeight - belowName(names), table, 'normal'),
      ];
    },
  };
}

/** The part's name without a caption, what it belongs to beside it or, where that is lower, under it. */
export function nameCell(width: number, part: string, supplement: string): TitleCell {
  const { title, table } = letterHeights;
  const across = width - 2 * room.side;
  const beside = measureText(part, title, 'bold').width + apart.beside;
  const names = wrapText(part, title, 'bold', across);
  const namesHeight = linesHeight(names.length, title);
  const set = (left: number, top: number, further: readonly string[]) => ({ left, top, further, low: Math.max(namesHeight, top + linesHeight(further.length, table)) });
  // At a comma where that takes no further line: "Tormentil, / 5 inch gauge", not "Tormentil, 5 / inch gauge".
  const broken = (room: number): readonly string[] => {
    const [plain, atComma] = [supplement, supplement.replaceAll(', ', ',\n')].map((text) => wrapText(text, table, 'normal', room));
    return atComma!.length <= plain!.length ? atComma! : plain!;
  };
  const under = set(0, namesHeight + belowName(names), broken(across));
  // Narrower than this, lines break at every word.
  const lines = across - beside < 25 ? undefined : broken(across - beside);
  const ways = [...(lines === undefined ? [] : [set(beside, Math.max(0, (namesHeight - linesHeight(lines.length, table)) / 2), lines)]), under];
  const { left, top, further, low } =
    supplement === '' ? set(0, 0, []) : ways.reduce((best, way) => (way.low < best.low - 1e-9 ? way : best));
  return {
    width,
    height: low + 2 * room.bottom,
    draw: (group, box) => {
      const [from, start] = [box.left + room.side, (box.top + box.bottom + low) / 2];
      return [
        ...lettered(group, 'part', names, from, start - (left > 0 ? (low - namesHeight) / 2 : 0), title, 'bold'),
        ...lettered(group, 'supplement', further, from + left, start - top, table, 'normal'),
      ];
    },
  };
}

/** The hand as one large letter. */
export function handCell(width: number, hand: 'R' | 'L'): TitleCell {
  const height = letterHeights.hand;
  return {
    width,
    height: captionHeight + height + room.bottom,
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
