import type { Vector2 } from '../../geometry/vector.js';
import type { Item, LineRole } from '../drawing.js';
import { stroke } from '../place/pieces.js';

/** The four sides of a box, from its upper left corner. */
export function boxItems(group: string, role: LineRole, [left, top]: Vector2, width: number, height: number, about?: string): readonly Item[] {
  const corners: readonly Vector2[] = [[left, top], [left + width, top], [left + width, top - height], [left, top - height]];
  return corners.map((corner, i) => stroke(group, role, corner, corners[(i + 1) % 4]!, about));
}
