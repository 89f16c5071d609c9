import type { Frame } from '../../../geometry/frame.js';
import type { Outline } from '../../../geometry/outline.js';
import { dot, type Vector3 } from '../../../geometry/vector.js';
import type { Form } from '../../../part/form.js';
import type { Solid } from '../../../solid/model.js';

/** A gap that keeps what holds off the work's own faces, so that each has its own edges; mm. */
export const apart = 0.01;

/** How far a solid's corners reach along a direction. */
export function reachAlong({ positions }: Solid, direction: Vector3): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (let i = 0; i < positions.length; i += 3) {
    const value = dot([positions[i] ?? 0, positions[i + 1] ?? 0, positions[i + 2] ?? 0], direction);
    [low, high] = [Math.min(low, value), Math.max(high, value)];
  }
  return [low, high];
}

const rectangle = (x: readonly [number, number], y: readonly [number, number]): Outline => {
  const corners = [[x[0], y[0]], [x[1], y[0]], [x[1], y[1]], [x[0], y[1]]] as const;
  return corners.map((from, i) => ({ kind: 'line', from, to: corners[(i + 1) % 4]!, face: `side ${i}` }));
};

/** A block in a frame, by its reach along each axis. */
export const block = (frame: Frame, x: readonly [number, number], y: readonly [number, number], z: readonly [number, number]): Form => ({
  kind: 'prism',
  frame,
  outline: rectangle(x, y),
  low: z[0],
  high: z[1],
  lowFace: 'low',
  highFace: 'high',
});
