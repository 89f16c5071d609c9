import type { Vector2 } from '../../../geometry/vector.js';
import type { Item } from '../../drawing.js';
import type { PaperBox } from '../../frame-box.js';
import { stroke } from '../../place/pieces.js';

const beyond = 4;
const shortestArrow = 9;
const headLength = 4;
const headWidth = 2.6;

/** An arrow's two ends on paper. */
export type Shaft = readonly [tail: Vector2, tip: Vector2];

/** An arrow to `tip` along `way`, from beyond all that the picture shows. */
export function shaftOf(tip: Vector2, way: Vector2, box: PaperBox): Shaft {
  const size = Math.hypot(way[0], way[1]) || 1;
  const back: Vector2 = [-way[0] / size, -way[1] / size];
  const outside = ([x, y]: Vector2): boolean => x < box.left - beyond || x > box.right + beyond || y < box.bottom - beyond || y > box.top + beyond;
  let reach = shortestArrow;
  while (reach < 200 && !outside([tip[0] + back[0] * reach, tip[1] + back[1] * reach])) reach += 1;
  return [[tip[0] + back[0] * reach, tip[1] + back[1] * reach], tip];
}

/** A bold arrow, unlike any leader. */
export function cutterArrow(group: string, [tail, tip]: Shaft): readonly Item[] {
  const size = Math.hypot(tip[0] - tail[0], tip[1] - tail[1]);
  const [x, y] = [(tip[0] - tail[0]) / size, (tip[1] - tail[1]) / size];
  const neck: Vector2 = [tip[0] - x * headLength, tip[1] - y * headLength];
  const half = headWidth / 2;
  return [
    stroke(group, 'visible', tail, neck, 'cutter'),
    { kind: 'fill', group, role: 'visible', about: 'cutter', shape: { kind: 'polygon', points: [tip, [neck[0] - y * half, neck[1] + x * half], [neck[0] + y * half, neck[1] - x * half]] } },
  ];
}
