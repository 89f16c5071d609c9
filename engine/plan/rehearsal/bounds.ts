import { dot, subtract, type Vector3 } from '../../geometry/vector.js';
import type { Frame } from '../../geometry/frame.js';
import { polygonOutline } from '../../part/author/outlines.js';
import type { Form } from '../../part/form.js';

/** A box along the axes of a frame, low and high corner counted in it, mm. */
export interface Bounds {
  readonly low: Vector3;
  readonly high: Vector3;
}

type Triple = [number, number, number];

/** The box round some points, counted in a frame; undefined for none. */
export function boundsOfPoints(points: Iterable<Vector3>, frame: Frame): Bounds | undefined {
  const low: Triple = [Infinity, Infinity, Infinity];
  const high: Triple = [-Infinity, -Infinity, -Infinity];
  for (const point of points) {
    const offset = subtract(point, frame.origin);
    [frame.x, frame.y, frame.z].forEach((axis, i) => {
      const at = dot(offset, axis);
      low[i] = Math.min(low[i]!, at);
      high[i] = Math.max(high[i]!, at);
    });
  }
  return low[0] > high[0] ? undefined : { low, high };
}

/** The corners of a solid's facets. */
export function* verticesOf({ positions }: { readonly positions: ArrayLike<number> }): Generator<Vector3> {
  for (let i = 0; i < positions.length; i += 3) yield [positions[i]!, positions[i + 1]!, positions[i + 2]!];
}

export const boundsOfSolid = (solid: { readonly positions: ArrayLike<number> }, frame: Frame): Bounds | undefined => boundsOfPoints(verticesOf(solid), frame);

/** The least box that holds both. */
export function joinedBounds(a: Bounds | undefined, b: Bounds | undefined): Bounds | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  const each = (pick: (x: number, y: number) => number, side: 'low' | 'high'): Vector3 => [0, 1, 2].map((i) => pick(a[side][i]!, b[side][i]!)) as unknown as Vector3;
  return { low: each(Math.min, 'low'), high: each(Math.max, 'high') };
}

/** The box as a form, its faces all named alike. */
export function formOfBounds({ low, high }: Bounds, frame: Frame, face = 'region'): Form {
  return {
    kind: 'prism',
    frame: { origin: frame.origin, x: frame.x, y: frame.y, z: frame.z },
    outline: polygonOutline([[low[0], low[1]], [high[0], low[1]], [high[0], high[1]], [low[0], high[1]]], [face, face, face, face]),
    low: low[2],
    high: high[2],
    lowFace: face,
    highFace: face,
  };
}

/** The frame of the part itself. */
export const partFrame: Frame = { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };
