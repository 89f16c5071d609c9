import { dot, subtract, type Vector3 } from '../../geometry/vector.js';
import type { Solid } from '../../solid/model.js';
import type { OperationFacts } from './facts.js';

/** How far a set of corners reaches along three directions, mm. */
export interface Reach {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

const corner = ({ positions }: Solid, vertex: number): Vector3 => [positions[3 * vertex] ?? 0, positions[3 * vertex + 1] ?? 0, positions[3 * vertex + 2] ?? 0];

/** The least and greatest coordinate along a direction of the corners of a solid, or of those of some of its cuts' faces. */
export function spanAlong(solid: Solid, direction: Vector3, cuts?: ReadonlySet<string>): readonly [low: number, high: number] | undefined {
  let [low, high] = [Infinity, -Infinity];
  solid.faceOfTriangle.forEach((face, triangle) => {
    if (cuts !== undefined && !cuts.has(solid.faces[face]!.tag.cut)) return;
    for (let k = 0; k < 3; k += 1) {
      const far = dot(corner(solid, solid.triangles[3 * triangle + k] ?? 0), direction);
      low = Math.min(low, far);
      high = Math.max(high, far);
    }
  });
  return low > high ? undefined : [low, high];
}

/** How large the new faces of an operation are along the axes of the machine, mm; nought where it leaves none. */
export function newFacesReach({ operation, after, frame }: OperationFacts): Reach {
  const cuts = new Set(operation.cuts.map(({ id }) => id));
  const along = (axis: Vector3): number => {
    const span = spanAlong(after, axis, cuts);
    return span === undefined ? 0 : span[1] - span[0];
  };
  return { x: along(frame.x), y: along(frame.y), z: along(frame.z) };
}

/** How deep below the top of the work a point of the faces of an operation lies, at most, mm along the spindle. */
export function depthBelowTop({ operation, before, after, frame }: OperationFacts): number {
  const top = spanAlong(before, frame.z)?.[1];
  const lowest = spanAlong(after, frame.z, new Set(operation.cuts.map(({ id }) => id)))?.[0];
  return top === undefined || lowest === undefined ? 0 : Math.max(0, top - lowest);
}

/** What a plane takes off the end of a solid, mm: how far the solid stands beyond it. */
export function standsBeyond(solid: Solid, point: Vector3, normal: Vector3): number {
  let most = 0;
  for (let i = 0; i < solid.positions.length / 3; i += 1) most = Math.max(most, dot(subtract(corner(solid, i), point), normal));
  return most;
}
