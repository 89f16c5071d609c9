import { UserError } from '../../units/user-error.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import { movedItems } from '../place/pieces.js';
import type { Strip } from './strips.js';

/** A column of a sheet that strips flow down. */
export type Column = PaperBox;

/** A column's strips on a sheet, as items in paper mm. */
export interface FlowedSheet {
  readonly items: readonly Item[];
  readonly operations: readonly number[];
}

/**
 * Lets groups of strips flow down the columns of as many sheets as they need. A group's first strips stay together with
 * what follows them; where a group runs over, `continued` gives what is repeated at the head of the next column. Throws
 * UserError when a strip is higher than an empty column.
 */
export function flow(
  groups: readonly { readonly strips: readonly Strip[]; readonly continued: readonly Strip[] }[],
  sheetColumns: readonly Column[],
): readonly FlowedSheet[] {
  const sheets: { items: Item[]; operations: number[] }[] = [{ items: [], operations: [] }];
  let column = 0;
  let y = sheetColumns[0]!.top;
  const next = (): void => {
    column += 1;
    if (column >= sheetColumns.length) {
      column = 0;
      sheets.push({ items: [], operations: [] });
    }
    y = sheetColumns[column]!.top;
  };
  const here = (): Column => sheetColumns[column]!;
  const put = (strip: Strip): void => {
    const sheet = sheets[sheets.length - 1]!;
    sheet.items.push(...movedItems(strip.items, [here().left, y]));
    if (strip.operation !== undefined) sheet.operations.push(strip.operation);
    y -= strip.height;
  };
  for (const { strips, continued } of groups) {
    strips.forEach((strip, i) => {
      // What must stand together: this strip, and those after it as long as each asks for the next.
      let needed = strip.height;
      for (let k = i; strips[k]?.withNext === true && strips[k + 1] !== undefined; k += 1) needed += strips[k + 1]!.height;
      const starts = i === 0 || strips[i - 1]!.withNext === false;
      if (starts && y - needed < here().bottom - 1e-6) {
        if (y === here().top) {
          const number = strips.slice(i).find(({ operation }) => operation !== undefined)?.operation;
          throw new UserError(`${number === undefined ? 'a set-up' : `operation ${number}`} does not fit an empty column of the sheet: make its words shorter`);
        }
        next();
        if (i > 0) for (const again of continued) put(again);
      }
      put(strip);
    });
    y -= 6;
  }
  return sheets;
}
