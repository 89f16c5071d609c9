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

/** How deep a saw goes, mm: along that of the two directions across the spindle in which its faces end inside the work. */
export function sawnDepth({ operation, after, frame }: OperationFacts): number {
  const cuts = new Set(operation.cuts.map(({ id }) => id));
  const reaches = [frame.x, frame.y].flatMap((axis) => {
    const [whole, sawn] = [spanAlong(after, axis), spanAlong(after, axis, cuts)];
    if (whole === undefined || sawn === undefined) return [];
    const closed = sawn[0] - whole[0] > 0.05 || whole[1] - sawn[1] > 0.05;
    return [{ reach: sawn[1] - sawn[0], closed }];
  });
  const inside = reaches.filter(({ closed }) => closed);
  return Math.max(0, ...(inside.length === 1 ? inside : reaches).map(({ reach }) => reach));
}

/** What a plane takes off the end of a solid, mm: how far the solid stands beyond it. */
export function standsBeyond(solid: Solid, point: Vector3, normal: Vector3): number {
  let most = 0;
  for (let i = 0; i < solid.positions.length / 3; i += 1) most = Math.max(most, dot(subtract(corner(solid, i), point), normal));
  return most;
}
