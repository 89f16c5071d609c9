import type { Vector2 } from '../../../geometry/vector.js';
import type { Item } from '../../drawing.js';
import { stroke } from '../../place/pieces.js';
import { insideHull } from './hull.js';

/** How far an arrow reaches out of the work, mm. */
const beyond = 6;
/** Reach of the target that marks the zero. */
const target = 3;
const shortestArrow = 9;
const headLength = 4;
const headWidth = 2.6;

/** An arrow's two ends on paper. */
export type Shaft = readonly [tail: Vector2, tip: Vector2];

/** An arrow to `tip` along `way`, from outside the work; it ends short of the target at the zero. */
export function shaftOf(tip: Vector2, way: Vector2, hull: readonly Vector2[], zero: Vector2 | undefined): Shaft {
  const size = Math.hypot(way[0], way[1]) || 1;
  const back: Vector2 = [-way[0] / size, -way[1] / size];
  const at = (reach: number): Vector2 => [tip[0] + back[0] * reach, tip[1] + back[1] * reach];
  const short = zero !== undefined && Math.hypot(zero[0] - tip[0], zero[1] - tip[1]) < target ? target + 0.5 : 0;
  let reach = short + shortestArrow;
  while (reach < 200 && insideHull(hull, at(reach - beyond))) reach += 1;
  return [at(reach), at(short)];
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
