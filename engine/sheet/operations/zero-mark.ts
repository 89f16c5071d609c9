import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import { house } from '../place/house.js';
import { dot, lettering, stroke } from '../place/pieces.js';

const ring = 1.8;
const reach = 3;
/** Half the side of the square that carries the nought. */
const half = 3.5;

/** The mark of a set-up's zero: a small target at the point, and by a leader a square with a nought in it, unlike any balloon. */
export function zeroMark(group: string, centre: Vector2, at: Vector2): readonly Item[] {
  const about = 'zero';
  const [dx, dy] = [at[0] - centre[0], at[1] - centre[1]];
  const far = Math.hypot(dx, dy);
  // From the square's edge to the ring of the target.
  const leave = half / Math.max(Math.abs(dx), Math.abs(dy));
  const corners: readonly Vector2[] = [[-half, -half], [half, -half], [half, half], [-half, half]].map(([x, y]): Vector2 => [centre[0] + x!, centre[1] + y!]);
  return [
    { kind: 'stroke', group, role: 'symbol', about, curve: { kind: 'arc', centre: at, radius: ring, start: 0, sweep: 360 } },
    stroke(group, 'symbol', [at[0] - reach, at[1]], [at[0] + reach, at[1]], about),
    stroke(group, 'symbol', [at[0], at[1] - reach], [at[0], at[1] + reach], about),
    dot(group, 'symbol', at, 1),
    ...corners.map((corner, i) => stroke(group, 'symbol', corner, corners[(i + 1) % 4]!, about)),
    ...(far > half + ring + 0.5 ? [stroke(group, 'leader', [centre[0] + dx * leave, centre[1] + dy * leave], [at[0] - (dx / far) * ring, at[1] - (dy / far) * ring], about)] : []),
    lettering(group, 'balloon', [centre[0], centre[1] - house.height / 2], '0', { anchor: 'middle', style: 'bold', about }),
  ];
}
