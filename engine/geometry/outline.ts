import type { Vector2 } from './vector.js';

/** A straight piece of an outline. `face` names the surface that this piece makes when the outline is swept. */
export interface LineSegment {
  readonly kind: 'line';
  readonly from: Vector2;
  readonly to: Vector2;
  readonly face: string;
}

/** A circular piece of an outline, less than a full turn, from `from` to `to`, turning left (counter-clockwise) or right. */
export interface ArcSegment {
  readonly kind: 'arc';
  readonly from: Vector2;
  readonly to: Vector2;
  readonly centre: Vector2;
  readonly turn: 'left' | 'right';
  readonly face: string;
}

export type Segment = LineSegment | ArcSegment;

/** A closed outline: segments end to end, counter-clockwise round the inside, the last ends where the first begins. */
export type Outline = readonly Segment[];
