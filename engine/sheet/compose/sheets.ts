import type { Orientation, Paper } from '../../../templates/paper.js';
import type { DrawingSheet, Item } from '../drawing.js';
import { drawingArea, printCheckBar, sheetFrame, sheetSize, titleBlock, type PaperBox, type TitleBlockKind, type TitleFields } from '../frame.js';

/** What stands at the foot of a sheet, and all that it and the frame's marks fill. */
interface Foot {
  readonly items: readonly Item[];
  readonly taken: readonly PaperBox[];
}

const barGap = 3;
/** Least clear room between the bar's words and the block beside it. */
const besideBlock = 1.5;

/**
 * Title block and bar to check the printer by, which stands in the lower left corner if there is room beside the block, if need be with its
 * words over it; else just over the block.
 */
export function footOn(paper: Paper, orientation: Orientation, fields: TitleFields, units: 'mm' | 'in', kind: TitleBlockKind): Foot {
  const area = drawingArea(paper, orientation);
  const block = titleBlock(fields, [area.right, area.bottom], { kind });
  const left = area.left + barGap;
  const bar =
    (['beside', 'over'] as const)
      .map((words) => printCheckBar([left, area.bottom + barGap], units, { words }))
      .find(({ box }) => box.right <= block.box.left - besideBlock) ?? printCheckBar([left, block.box.top + barGap], units);
  return { items: [...block.items, ...bar.items], taken: [block.box, bar.box, ...centringMarks(paper, orientation)] };
}

/** The centring marks of the frame reach this far into the drawing area, mm. */
const markReach = 5;

/** The marks stand at the middle of the sheet, which the wide margin for filing makes another than that of the drawing area. */
function centringMarks(paper: Paper, orientation: Orientation): readonly PaperBox[] {
  const area = drawingArea(paper, orientation);
  const [width, height] = sheetSize(paper, orientation);
  const [x, y] = [width / 2, height / 2];
  return [
    { left: x - 0.5, right: x + 0.5, top: area.top, bottom: area.top - markReach },
    { left: x - 0.5, right: x + 0.5, top: area.bottom + markReach, bottom: area.bottom },
    { left: area.left, right: area.left + markReach, top: y + 0.5, bottom: y - 0.5 },
    { left: area.right - markReach, right: area.right, top: y + 0.5, bottom: y - 0.5 },
  ];
}

/** A finished sheet: frame, title block, bar, and what stands on it. */
export function finishSheet(
  paper: Paper,
  orientation: Orientation,
  fields: TitleFields,
  units: 'mm' | 'in',
  kind: TitleBlockKind,
  title: string,
  items: readonly Item[],
): DrawingSheet {
  return {
    size: sheetSize(paper, orientation),
    paper: paper.name,
    title,
    items: [...sheetFrame(paper, orientation), ...footOn(paper, orientation, fields, units, kind).items, ...items],
  };
}
