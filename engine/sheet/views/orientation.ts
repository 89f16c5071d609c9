import { opposite, vectorOf } from '../../part/author/directions.js';
import type { Direction } from '../../part/station.js';
import { cross } from '../../geometry/vector.js';
import type { Camera } from '../../view/model.js';
import type { ViewPlace } from './plan.js';

/** How a view lies on paper: the part directions that point right, up and to the eye. */
export interface Orientation {
  readonly right: Direction;
  readonly up: Direction;
  readonly eye: Direction;
}

const directions: readonly Direction[] = ['+x', '-x', '+y', '-y', '+z', '-z'];

/** The direction square to two others, right-handed: right from up and eye. */
export function rightFrom(up: Direction, eye: Direction): Direction {
  const wanted = cross(vectorOf(up), vectorOf(eye));
  return directions.find((each) => vectorOf(each).every((value, i) => value === wanted[i as 0 | 1 | 2]))!;
}

export const cameraOf = (orientation: Orientation): Camera => ({
  toward: vectorOf(opposite(orientation.eye)),
  up: vectorOf(orientation.up),
});

/** The six views round a front view, each turned so that it keeps the front view's right or up (ISO 128-3). */
export function orientationsRound(front: Direction, up: Direction): Readonly<Record<ViewPlace, Orientation>> {
  const right = rightFrom(up, front);
  const look = (eye: Direction, upward: Direction): Orientation => ({ eye, up: upward, right: rightFrom(upward, eye) });
  return {
    front: look(front, up),
    right: look(right, up),
    left: look(opposite(right), up),
    above: look(up, opposite(front)),
    below: look(opposite(up), front),
    rear: look(opposite(front), up),
  };
}
