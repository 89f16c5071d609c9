import { papers } from '../../../templates/papers/index.js';
import type { Orientation, Paper } from '../../../templates/paper.js';
import type { DrawingScale } from '../../../templates/scales.js';
import type { Part } from '../../part/part.js';
import { UserError } from '../../units/user-error.js';
import { heightOf, widthOf, type Block } from '../compose/block.js';
import { pack } from '../compose/pack.js';
import { finishSheet, footOn } from '../compose/sheets.js';
import { titleOf } from '../compose/title.js';
import type { DrawingSheet } from '../drawing.js';
import { drawingArea, type TitleFields } from '../frame.js';
import { lettering, textBox } from '../place/pieces.js';
import { movedBox, unionOf } from '../place/plane.js';
import { papersFor, scalesFor, speechFor, type PrintWishes } from '../print-wishes.js';
import type { ViewPlan } from '../views/plan.js';
import { house } from '../place/house.js';
import { moved, outsideBlock } from './outside-block.js';

/** A part at one size, as it is shown beside the other. */
export interface Shown {
  readonly part: Part;
  readonly plans: readonly ViewPlan[];
}

const documentType = 'old and new';
const note = 'Both at the one scale of this sheet: to compare, not to work from.';

/**
 * Old and new on one sheet at one scale of the paper: the smallest paper, and on it the largest scale, at which both have room;
 * beside each other if they can be, else one over the other.
 * @param sheets of the whole document, whose first this is.
 * @throws UserError where they have none on any paper, at any scale.
 */
export function sideBySide(before: Shown, after: Shown, asked: PrintWishes, sheets: number): DrawingSheet {
  const speech = speechFor(asked, after.part);
  for (const paper of papersFor(asked) ?? papers)
    for (const scale of scalesFor(asked)) {
      const blocks = [before, after].map(({ part, plans }, i) => outsideBlock(plans, i === 0 ? 'before' : 'after', part.engine, scale, asked.angle, speech.unit));
      for (const blocksHere of [[inRow(blocks)], blocks])
        for (const orientation of paper.orientations) {
          const fields: TitleFields = { ...titleOf(after.part, speech, { handed: false, scale: scale.name, paper, angle: asked.angle }), documentType, sheet: 1, sheets };
          const sheet = laidOut(blocksHere, scale, paper, orientation, fields, speech.unit);
          if (sheet !== undefined) return sheet;
        }
    }
  throw new UserError(`old and new ${before.part.title.toLowerCase()} find no room side by side${asked.scale === undefined ? '' : ` at ${asked.scale}`}; leave out --scale or take a larger --paper.`);
}

/** Blocks beside each other with their feet in line, as one. */
function inRow(blocks: readonly Block[]): Block {
  const placed = blocks.map((block, i) => {
    const left = blocks.slice(0, i).reduce((sum, { box }) => sum + widthOf(box) + house.betweenViews, 0);
    const by = [left - block.box.left, -block.box.bottom] as const;
    return { items: moved(block, by), box: movedBox(block.box, by) };
  });
  return { id: 'old and new', items: placed.flatMap(({ items }) => items), box: unionOf(placed.map(({ box }) => box)), fills: placed.map(({ box }) => box) };
}

function laidOut(blocks: readonly Block[], scale: DrawingScale, paper: Paper, orientation: Orientation, fields: TitleFields, unit: 'mm' | 'in'): DrawingSheet | undefined {
  const area = drawingArea(paper, orientation);
  const foot = footOn(paper, orientation, fields, unit, 'full');
  const said = lettering('note', 'note', [area.left + 8, area.top - 11], note);
  if (blocks.some((block) => widthOf(block.box) > widthOf(area) || heightOf(block.box) > heightOf(area))) return undefined;
  const sheets = pack(blocks, { area: { left: area.left + 6, right: area.right - 6, top: area.top - 16, bottom: area.bottom + 6 }, taken: [...foot.taken, textBox(said)] });
  if (sheets === undefined || sheets.length !== 1) return undefined;
  const items = sheets[0]!.flatMap(({ block, by }) => moved(block, by));
  return finishSheet(paper, orientation, fields, unit, 'full', `${fields.part}: ${documentType}, ${scale.name}`, [said, ...items]);
}
