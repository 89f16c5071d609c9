import type { Vector2 } from '../geometry/vector.js';
import { nearestClause } from '../units/nearest-name.js';
import { UserError } from '../units/user-error.js';
import type { Orientation, Paper } from '../../templates/paper.js';
import { papers } from '../../templates/papers/index.js';
import type { PaperBox } from './frame-box.js';

/** The paper of that name, capitals or not. Throws UserError if there is none. */
export function paperNamed(name: string): Paper {
  const found = papers.find((paper) => paper.name.toLowerCase() === name.toLowerCase());
  if (found) return found;
  const names = papers.map((paper) => paper.name);
  throw new UserError(`there is no paper "${name}"; there are ${names.join(', ')}${nearestClause(name, names)}`);
}

/** Width and height of a sheet of that paper, mm. */
export const sheetSize = (paper: Paper, orientation: Orientation): Vector2 =>
  orientation === 'portrait' ? [paper.short, paper.long] : [paper.long, paper.short];

/** The box of the frame line's middle: the room for drawing. */
export function drawingArea(paper: Paper, orientation: Orientation): PaperBox {
  const [width, height] = sheetSize(paper, orientation);
  const { left, right, top, bottom } = paper.margins;
  return { left, bottom, right: width - right, top: height - top };
}
