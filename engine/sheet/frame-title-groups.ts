import type { Item } from './drawing.js';
import type { PaperBox } from './frame-box.js';
import { lineItem } from './frame-items.js';
import type { TitleCell } from './frame-title-cells.js';

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Boxes side by side, a line between them, all as high as the highest. */
export function sideBySide(cells: readonly TitleCell[]): TitleCell {
  return {
    width: sum(cells.map(({ width }) => width)),
    height: Math.max(...cells.map(({ height }) => height)),
    draw: (group, box) => {
      const items: Item[] = [];
      let left = box.left;
      cells.forEach((cell, index) => {
        if (index > 0) items.push(lineItem(group, 'table', [left, box.bottom], [left, box.top]));
        const right = left + cell.width;
        items.push(...cell.draw(group, { ...box, left, right }));
        left = right;
      });
      return items;
    },
  };
}

/** Boxes one under the other, a line between them, all as wide as the widest; height to spare is shared out. */
export function stacked(cells: readonly TitleCell[]): TitleCell {
  const height = sum(cells.map((cell) => cell.height));
  return {
    width: Math.max(...cells.map(({ width }) => width)),
    height,
    draw: (group, box: PaperBox) => {
      const spare = (box.top - box.bottom - height) / cells.length;
      const items: Item[] = [];
      let top = box.top;
      cells.forEach((cell, index) => {
        if (index > 0) items.push(lineItem(group, 'table', [box.left, top], [box.right, top]));
        const bottom = index === cells.length - 1 ? box.bottom : top - cell.height - spare;
        items.push(...cell.draw(group, { ...box, top, bottom }));
        top = bottom;
      });
      return items;
    },
  };
}

/** The lowest of several ways to set the same fields; the first of those that are alike. */
export const lowest = (ways: readonly [TitleCell, ...TitleCell[]]): TitleCell =>
  ways.reduce((best, way) => (way.height < best.height - 1e-9 ? way : best));
