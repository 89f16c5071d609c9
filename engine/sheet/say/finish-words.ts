import type { FinishDepth } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import type { LinearDimension } from '../dimension/linear.js';
import { signs, sizeText, type Speech } from './texts.js';

/** What stands by a size that holds only to a finish depth: how deep, and how much narrower the rest may stay. */
export function finishLines(finish: FinishDepth | undefined, speech: Speech): readonly string[] {
  if (finish === undefined) return [];
  const own = { ...speech, other: false };
  return [`to size ${signs.depth}${sizeText(finish.depth, own)},`, `deeper \u2212${sizeText({ value: finish.under, purpose: 'size' }, own)}`];
}

/** The finish depth of the cut between whose walls a distance is. */
export function finishOfWalls(part: Part, { from, to, reference }: LinearDimension): FinishDepth | undefined {
  if (reference) return undefined;
  const found = part.operations.flatMap(({ cuts }) => cuts).find(({ finishDepth }) => finishDepth !== undefined && [from.id, to.id].every((id) => finishDepth.walls.includes(id)));
  return found?.finishDepth;
}
