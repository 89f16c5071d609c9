import { letterHeights } from '../../templates/lettering.js';
import { titleBlockWidth } from '../../templates/title-block.js';
import type { Vector2 } from '../geometry/vector.js';
import { UserError } from '../units/user-error.js';
import type { Item } from './drawing.js';
import type { PaperBox } from './frame-box.js';
import { lineItem } from './frame-items.js';
import { handCell, projectionCell, textCell, titleCell, type TitleCell } from './frame-title-cells.js';
import type { TitleFields } from './frame-title-fields.js';
import { followingBlock } from './frame-title-following.js';
import { lowest, sideBySide, stacked } from './frame-title-groups.js';

const group = 'Title block';
/** A block higher than this would crowd out the drawing: the fields were not checked. */
const highest = 130;

/** `full` says all; `following` is the low block of the sheets that carry on from the first, with what every sheet must say. */
export type TitleBlockKind = 'full' | 'following';

const handWidth = 20;

/** All fields, from the top down: what the bench needs, the name, the papers. */
function fullBlock(fields: TitleFields): TitleCell {
  const hand = fields.hand === undefined ? [] : [handCell(handWidth, fields.hand)];
  const beside = 152 - hand.length * handWidth;
  const tolerance = (width: number): TitleCell => textCell('generalTolerance', width, fields.generalTolerance);
  const texture = (width: number): TitleCell => textCell('generalTexture', width, fields.generalTexture);
  const edges = (width: number): TitleCell => textCell('edges', width, fields.edges);
  const finish = (width: number): TitleCell => textCell('finish', width, fields.finish);
  return stacked([
    sideBySide([textCell('material', 66, fields.material), textCell('stock', 72, fields.stock), textCell('quantity', 42, fields.quantity)]),
    // A heat treatment told in full needs a line of its own.
    lowest([
      sideBySide([tolerance(32), texture(28), edges(42), finish(78)]),
      stacked([sideBySide([tolerance(84), texture(48), edges(48)]), finish(180)]),
    ]),
    sideBySide([
      ...hand,
      stacked([
        titleCell(beside, fields.part, fields.supplement ?? ''),
        sideBySide([
          textCell('owner', 46, fields.owner),
          textCell('creator', 26, fields.creator),
          textCell('approval', beside - 102, fields.approval ?? ''),
          textCell('dateOfIssue', 30, fields.dateOfIssue ?? ''),
        ]),
      ]),
      stacked([textCell('scale', 28, fields.scale, letterHeights.scale), projectionCell(28, fields.projection)]),
    ]),
    sideBySide([
      textCell('documentType', 42, fields.documentType),
      textCell('documentNumber', 46, fields.documentNumber),
      textCell('revision', 20, fields.revision ?? ''),
      textCell('units', 26, fields.units),
      textCell('sheet', 24, `${fields.sheet} of ${fields.sheets}`),
      textCell('paper', 22, fields.paper),
    ]),
  ]);
}

/**
 * The title block with its lower right corner at `corner`, which is the frame's: the frame's lines close it below and on the right. Fields in
 * the manner of ISO 7200 with what the bench needs; a `following` block leaves out what the first sheet tells. Long text goes on to further
 * lines and the block grows upward; lettering is never made smaller. Throws UserError if the block would grow beyond all measure.
 */
export function titleBlock(
  fields: TitleFields,
  corner: Vector2,
  options: { readonly kind?: TitleBlockKind } = {},
): { readonly items: readonly Item[]; readonly box: PaperBox } {
  const block = options.kind === 'following' ? followingBlock(fields) : fullBlock(fields);
  const { height } = block;
  if (height > highest) {
    const longest = Object.values(fields).map(String).reduce((a, b) => (b.length > a.length ? b : a));
    throw new UserError(`the title block would be ${height.toFixed(0)} mm high, and ${highest} mm is the most: make its words shorter, "${longest}" first`);
  }
  const [right, bottom] = corner;
  const box: PaperBox = { left: right - titleBlockWidth, bottom, right, top: bottom + height };
  return {
    items: [
      lineItem(group, 'frame', [box.left, bottom], [box.left, box.top]),
      lineItem(group, 'frame', [box.left, box.top], [right, box.top]),
      ...block.draw(group, box),
    ],
    box,
  };
}
