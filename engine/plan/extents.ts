import { dot, scale, type Vector3 } from '../geometry/vector.js';
import { offsetFrom } from '../solid/surface.js';
import type { Solid, Surface } from '../solid/model.js';
import type { Axis } from '../part/station.js';
import type { Operation } from '../part/part.js';
import { directionOnMachine, toMachine, type MachineFrame } from './machine-frame.js';

/** How far the work reaches along the machine's axes, mm from the zero; an end that is no exact surface is left out. */
export type Extents = Readonly<Record<Axis, { readonly low?: number; readonly high?: number }>>;

/** The reach of a solid as held. Facets only tell which surface stands outermost; the figure is that surface's own. */
export function extentsOf(solid: Solid, frame: MachineFrame): Extents {
  const along = (axis: Vector3) => {
    const zero = dot(frame.origin, axis);
    const low = reach(solid, scale(axis, -1));
    const high = reach(solid, axis);
    return { ...(low === undefined ? {} : { low: -low - zero + 0 }), ...(high === undefined ? {} : { high: high - zero + 0 }) };
  };
  return { x: along(frame.x), y: along(frame.y), z: along(frame.z) };
}

/** What an operation's cuts right across the work leave of its reach. */
export function extentsAfter(extents: Extents, frame: MachineFrame, operation: Operation): Extents {
  const result: Record<Axis, { readonly low?: number; readonly high?: number }> = { ...extents };
  for (const form of operation.cuts.flatMap(({ forms }) => forms)) {
    if (form.kind !== 'half-space') continue;
    const normal = directionOnMachine(frame, form.normal);
    const i = normal.findIndex((value) => Math.abs(value) > 1 - 1e-9);
    const axis = (['x', 'y', 'z'] as const)[i];
    if (axis === undefined) continue;
    const at = toMachine(frame, form.point)[i as 0 | 1 | 2];
    const { low, high } = result[axis];
    if ((normal[i] ?? 0) > 0 && high !== undefined) result[axis] = { ...result[axis], high: Math.min(high, at) };
    if ((normal[i] ?? 0) < 0 && low !== undefined) result[axis] = { ...result[axis], low: Math.max(low, at) };
  }
  return result;
}

/** The exact farthest coordinate along a direction. */
function reach({ positions, surfaces, faces, triangles, faceOfTriangle, facetError }: Solid, direction: Vector3): number | undefined {
  const [dx, dy, dz] = direction;
  const far = (vertex: number): number => positions[3 * vertex]! * dx + positions[3 * vertex + 1]! * dy + positions[3 * vertex + 2]! * dz;
  let most = -Infinity;
  let outermost = 0;
  for (let vertex = 0; 3 * vertex < positions.length; vertex += 1) {
    const here = far(vertex);
    if (here > most) [most, outermost] = [here, vertex];
  }
  const at: Vector3 = [positions[3 * outermost] ?? 0, positions[3 * outermost + 1] ?? 0, positions[3 * outermost + 2] ?? 0];
  const touching = new Set<number>();
  for (let i = 0; i < triangles.length; i += 1) {
    if (far(triangles[i]!) < most - 1e-6) continue;
    const face = faces[faceOfTriangle[Math.floor(i / 3)] ?? 0];
    if (face !== undefined) touching.add(face.surface);
  }
  const exact = [...touching].flatMap((index) => {
    const surface = surfaces[index];
    const value = surface === undefined ? undefined : farthest(surface, direction);
    return value === undefined || Math.abs(value - most) > facetError + 1e-5 ? [] : [value];
  });
  if (exact.length > 0) return Math.max(...exact);
  // A corner in which three flat faces meet is exact as it is.
  const planes = [...touching].flatMap((index) => surfaces[index] ?? []).filter((surface) => surface.kind === 'plane' && Math.abs(offsetFrom(surface, at).distance) < 1e-6);
  return planes.length === touching.size && planes.length >= 2 ? most : undefined;
}

/** How far a surface reaches along a direction, where that does not depend on where it ends. */
function farthest(surface: Surface, direction: Vector3): number | undefined {
  if (surface.kind === 'plane') return dot(surface.normal, direction) > 1 - 1e-9 ? dot(surface.point, direction) : undefined;
  if (surface.kind === 'cylinder') return Math.abs(dot(surface.axis, direction)) < 1e-9 ? dot(surface.origin, direction) + surface.radius : undefined;
  return undefined;
}
