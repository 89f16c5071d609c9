import { letterHeights } from '../../templates/lettering.js';
import { titleBlockWidth } from '../../templates/title-block.js';
import type { Vector2 } from '../geometry/vector.js';
import type { Item } from './drawing.js';
import type { PaperBox } from './frame-box.js';
import { lineItem } from './frame-items.js';
import { handCell, projectionCell, textCell, titleCell, type TitleCell } from './frame-title-cells.js';
import type { TitleFields } from './frame-title-fields.js';

const group = 'Title block';
/** A block higher than this would crowd out the drawing: the fields were not checked. */
const highest = 130;

/** The rows of the block from the top down; the widths of each row add up to the block's. */
function titleRows(fields: TitleFields): readonly (readonly TitleCell[])[] {
  const hand = fields.hand === undefined ? [] : [handCell(28, fields.hand)];
  return [
    [textCell('material', 60, fields.material), textCell('stock', 72, fields.stock), textCell('quantity', 48, fields.quantity)],
    [
      textCell('generalTolerance', 84, fields.generalTolerance),
      textCell('generalTexture', 48, fields.generalTexture),
      textCell('edges', 48, fields.edges),
    ],
    [textCell('finish', 132, fields.finish), textCell('units', 48, fields.units)],
    [
      ...hand,
      titleCell(132 - hand.length * 28, fields.part, fields.supplement ?? ''),
      textCell('scale', 22, fields.scale, letterHeights.scale),
      projectionCell(26, fields.projection),
    ],
    [
      textCell('owner', 60, fields.owner),
      textCell('creator', 36, fields.creator),
      textCell('approval', 36, fields.approval ?? ''),
      textCell('dateOfIssue', 48, fields.dateOfIssue ?? ''),
    ],
    [
      textCell('documentType', 60, fields.documentType),
      textCell('documentNumber', 50, fields.documentNumber),
      textCell('revision', 22, fields.revision ?? ''),
      textCell('sheet', 26, `${fields.sheet} of ${fields.sheets}`),
      textCell('paper', 22, fields.paper),
    ],
  ];
}

/**
 * The title block with its lower right corner at `corner`, which is the frame's: the frame's lines close it below and on the right. Fields in
 * the manner of ISO 7200 with what the bench needs. Long text goes on to further lines and the block grows upward; lettering is never
 * made smaller. Throws RangeError if the block would grow beyond all measure (checkTitleFields keeps that from happening).
 */
export function titleBlock(fields: TitleFields, corner: Vector2): { readonly items: readonly Item[]; readonly box: PaperBox } {
  const [right, bottom] = corner;
  const left = right - titleBlockWidth;
  const rows = titleRows(fields);
  const heights = rows.map((cells) => Math.max(...cells.map((cell) => cell.height)));
  const height = heights.reduce((sum, each) => sum + each, 0);
  if (height > highest) throw new RangeError(`a title block of ${height.toFixed(1)} mm is higher than ${highest} mm: its fields are too long`);
  const top = bottom + height;
  const items: Item[] = [
    lineItem(group, 'frame', [left, bottom], [left, top]),
    lineItem(group, 'frame', [left, top], [right, top]),
  ];
  let rowTop = top;
  rows.forEach((cells, row) => {
    const rowBottom = rowTop - (heights[row] ?? 0);
    if (row > 0) items.push(lineItem(group, 'table', [left, rowTop], [right, rowTop]));
    let cellLeft = left;
    cells.forEach((cell, column) => {
      if (column > 0) items.push(lineItem(group, 'table', [cellLeft, rowBottom], [cellLeft, rowTop]));
      items.push(...cell.draw(group, { left: cellLeft, right: cellLeft + cell.width, top: rowTop, bottom: rowBottom }));
      cellLeft += cell.width;
    });
    rowTop = rowBottom;
  });
  return { items, box: { left, bottom, right, top } };
}
