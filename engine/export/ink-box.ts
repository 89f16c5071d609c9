import type { Vector2 } from '../geometry/vector.js';
import { turn2 } from '../lettering/index.js';
import type { PaperBox } from '../sheet/frame-box.js';
import { penPath } from './beziers.js';
import type { Ink } from './ink.js';

/** Points whose box holds the ink, pens' widths aside: for curves their control points. */
function points(ink: Ink): readonly Vector2[] {
  switch (ink.kind) {
    case 'stroke':
      return ink.curves.flatMap((curve) => {
        const { start, moves } = penPath(curve);
        return [start, ...moves.flat()];
      });
    case 'fill': {
      const { shape } = ink;
      if (shape.kind === 'polygon') return shape.points;
      const [[x, y], r] = [shape.centre, shape.radius];
      return [[x - r, y - r], [x + r, y + r]];
    }
    case 'text': {
      const far = Math.max(...[...ink.letters, ...ink.signs].map((piece) => piece.x + piece.width));
      return [[0, 0], [far, 0], [far, ink.size], [0, ink.size]].map(([x = 0, y = 0]) => {
        const [u, v] = turn2([x, y], ink.angle);
        return [ink.origin[0] + u, ink.origin[1] + v] as const;
      });
    }
  }
}

/** A box that holds all the ink, by a little more than the least; mm. Throws RangeError where there is none. */
export function inkBox(ink: readonly Ink[]): PaperBox {
  const all = ink.flatMap(points);
  if (all.length === 0) throw new RangeError('no ink has no box');
  const [first = [0, 0]] = all;
  let [left, right, bottom, top] = [first[0], first[0], first[1], first[1]];
  for (const [x, y] of all) {
    [left, right] = [Math.min(left, x), Math.max(right, x)];
    [bottom, top] = [Math.min(bottom, y), Math.max(top, y)];
  }
  return { left, right, bottom, top };
}
