import type { Curve2 } from '../geometry/curve.js';
import type { Vector2 } from '../geometry/vector.js';

/** The signs that are drawn as our own strokes, since few fonts have them all. */
export type SignName = 'diameter' | 'counterbore' | 'countersink' | 'depth';

/** A sign for letters of capital height one: strokes from the base line's left end, the room it takes, and the reach of its strokes' middles. */
export interface Sign {
  readonly name: SignName;
  readonly strokes: readonly Curve2[];
  readonly advance: number;
  readonly top: number;
  readonly bottom: number;
}

/** Room left and right of a sign's strokes, as a share of the capital height. */
const side = 0.15;

const line = (from: Vector2, to: Vector2): Curve2 => ({ kind: 'line', from, to });

function diameterSign(): Sign {
  const radius = 0.4;
  const centre: Vector2 = [side + radius, 0.5];
  const reach: Vector2 = [0.75 * Math.cos(Math.PI / 3), 0.75 * Math.sin(Math.PI / 3)];
  return {
    name: 'diameter',
    strokes: [
      { kind: 'arc', centre, radius, start: 0, sweep: 360 },
      line([centre[0] - reach[0], centre[1] - reach[1]], [centre[0] + reach[0], centre[1] + reach[1]]),
    ],
    advance: 2 * (side + radius),
    top: 0.5 + reach[1],
    bottom: 0.5 - reach[1],
  };
}

function counterboreSign(): Sign {
  return {
    name: 'counterbore',
    strokes: [line([side, 1], [side, 0]), line([side, 0], [side + 2, 0]), line([side + 2, 0], [side + 2, 1])],
    advance: 2 + 2 * side,
    top: 1,
    bottom: 0,
  };
}

function countersinkSign(): Sign {
  return {
    name: 'countersink',
    strokes: [line([side, 1], [side + 1, 0]), line([side + 1, 0], [side + 2, 1])],
    advance: 2 + 2 * side,
    top: 1,
    bottom: 0,
  };
}

function depthSign(): Sign {
  const middle = side + 0.4;
  return {
    name: 'depth',
    strokes: [
      line([side, 1], [side + 0.8, 1]),
      line([middle, 1], [middle, 0]),
      line([middle - 0.25, 0.4], [middle, 0]),
      line([middle, 0], [middle + 0.25, 0.4]),
    ],
    advance: 0.8 + 2 * side,
    top: 1,
    bottom: 0,
  };
}

/**
 * Signs by character. Sizes as multiples of the capital height in the manner of ASME Y14.5 (from memory): diameter circle 0.8 with a
 * slash of 1.5 at 60 degrees, counterbore 2 by 1, countersink 2 wide at 90 degrees, depth arrow 1 high under a bar of 0.8.
 */
export const signs: ReadonlyMap<string, Sign> = new Map([
  ['\u2300', diameterSign()],
  ['\u2334', counterboreSign()],
  ['\u2335', countersinkSign()],
  ['\u21a7', depthSign()],
]);

/** Thickness of a sign's strokes as a share of the capital height: ISO 3098 type B for normal lettering, and half as much again for bold. */
export const signThickness = { normal: 0.1, bold: 0.15 } as const;
