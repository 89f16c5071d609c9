import { add2, type Vector2 } from '../geometry/vector.js';
import type { FontStyle } from './font.js';
import { measureText } from './layout.js';
import { turn2 } from './place-curve.js';

/** A line of lettering on paper, mm: see TextItem of the drawing model, which fits this shape. */
export interface PlacedText {
  readonly text: string;
  readonly at: Vector2;
  readonly height: number;
  readonly angle: number;
  readonly anchor: 'left' | 'middle' | 'right';
  readonly style: FontStyle;
}

/** How far along the base line the anchor lies, as a share of the width. */
export const anchorShare = { left: 0, middle: 0.5, right: 1 } as const;

/** The four corners of the ink's box of a line of text, counter-clockwise from the lower left as the text is read. Throws as measureText does. */
export function textCorners(placed: PlacedText): readonly [Vector2, Vector2, Vector2, Vector2] {
  const { width, ascent, descent } = measureText(placed.text, placed.height, placed.style);
  const left = -anchorShare[placed.anchor] * width;
  const corner = (x: number, y: number): Vector2 => add2(placed.at, turn2([x, y], placed.angle));
  return [corner(left, -descent), corner(left + width, -descent), corner(left + width, ascent), corner(left, ascent)];
}
