import type { Orientation, Paper } from '../../../templates/paper.js';
import type { Vector2 } from '../../geometry/vector.js';
import type { DrawingSheet, Item } from '../drawing.js';
import { drawingArea, printCheckBar, sheetFrame, sheetSize, titleBlock, type PaperBox, type TitleBlockKind, type TitleFields } from '../frame.js';

/** What all sheets of a print have in common at their foot. */
export interface Foot {
  readonly titleWidth: number;
  readonly titleHeight: number;
  /** All that the foot and the frame's marks fill. */
  readonly taken: readonly PaperBox[];
}

const barGap = 3;

/** Where the bar to check the printer by stands: in the lower left corner, or over a title block that fills the width. */
function barAt(paper: Paper, orientation: Orientation, title: PaperBox): Vector2 {
  const area = drawingArea(paper, orientation);
  const beside = title.left - area.left > 128;
  return [area.left + barGap, (beside ? area.bottom : title.top) + barGap];
}

/** Room that the title block, and the bar where it stands over it, take at the foot of a sheet. */
export function footOn(paper: Paper, orientation: Orientation, fields: TitleFields, units: 'mm' | 'in', kind: TitleBlockKind): Foot {
  const area = drawingArea(paper, orientation);
  const { box } = titleBlock(fields, [area.right, area.bottom], { kind });
  const bar = printCheckBar(barAt(paper, orientation, box), units);
  const over = bar.box.bottom > box.top;
  return {
    titleWidth: box.right - box.left,
    titleHeight: (over ? bar.box.top : box.top) - area.bottom,
    taken: [box, bar.box, ...centringMarks(area)],
  };
}

/** The centring marks of the frame reach this far into the drawing area, mm. */
const markReach = 5;

function centringMarks(area: PaperBox): readonly PaperBox[] {
  const [x, y] = [(area.left + area.right) / 2, (area.bottom + area.top) / 2];
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
  const area = drawingArea(paper, orientation);
  const block = titleBlock(fields, [area.right, area.bottom], { kind });
  const bar = printCheckBar(barAt(paper, orientation, block.box), units);
  return {
    size: sheetSize(paper, orientation),
    paper: paper.name,
    title,
    items: [...sheetFrame(paper, orientation), ...block.items, ...bar.items, ...items],
  };
}
