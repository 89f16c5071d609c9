import { add, cross, dot, length, scale, subtract, type Vector3 } from '../geometry/vector.js';
import type { Solid, Surface } from '../solid/model.js';

/** The axis of a body that is turned but for some cuts. `direction` has length one. */
export interface TurnedAxis {
  readonly point: Vector3;
  readonly direction: Vector3;
}

const known = new WeakMap<Solid, { readonly axis: TurnedAxis | undefined }>();

/** Kept as long as the solid. */
export function turnedAxisOf(solid: Solid): TurnedAxis | undefined {
  const found = known.get(solid) ?? { axis: findAxis(solid) };
  known.set(solid, found);
  return found.axis;
}

const same = 1e-4;

/** Round faces are counted in steps of ten degrees; so many of them make a body turned: half a turn. */
const steps = 36;
const leastSteps = 18;

/**
 * The axis about which nothing reaches further out than faces turned about it do, and about which those go round by half a
 * turn or more.
 */
function findAxis(solid: Solid): TurnedAxis | undefined {
  const tried: TurnedAxis[] = [];
  const corners = cornersBySurface(solid);
  const cylinders = solid.surfaces.filter((surface) => surface.kind === 'cylinder').sort((a, b) => b.radius - a.radius);
  for (const { origin, axis } of cylinders) {
    const candidate: TurnedAxis = { point: origin, direction: axis };
    if (tried.some((other) => isOn(other, origin) && length(cross(other.direction, axis)) < same)) continue;
    tried.push(candidate);
    if (isTurned(solid, corners, candidate)) return candidate;
  }
  return undefined;
}

/** The corners of the facets of each curved surface, some of them more than once. */
function cornersBySurface({ triangles, faces, faceOfTriangle, surfaces }: Solid): readonly (readonly number[])[] {
  const lists: number[][] = surfaces.map(() => []);
  const wanted = faces.map(({ surface }) => (surfaces[surface]!.kind === 'plane' ? undefined : lists[surface]));
  for (let t = 0; t < faceOfTriangle.length; t += 1) wanted[faceOfTriangle[t]!]?.push(triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!);
  return lists;
}

function isTurned({ positions, surfaces }: Solid, corners: readonly (readonly number[])[], axis: TurnedAxis): boolean {
  const across = Math.abs(axis.direction[0]) < 0.9 ? cross(axis.direction, [1, 0, 0]) : cross(axis.direction, [0, 1, 0]);
  const u = scale(across, 1 / length(across));
  const v = cross(axis.direction, u);
  const [px, py, pz] = axis.point;
  // Plain numbers, for this is asked of every solid that is looked at.
  const from = (vertex: number, way: Vector3): number => (positions[3 * vertex]! - px) * way[0] + (positions[3 * vertex + 1]! - py) * way[1] + (positions[3 * vertex + 2]! - pz) * way[2];
  const seen = new Uint8Array(steps);
  let outermost = 0;
  surfaces.forEach((surface, i) => {
    if (!isRoundAbout(surface, axis)) return;
    for (const vertex of corners[i]!) {
      const [x, y] = [from(vertex, u), from(vertex, v)];
      outermost = Math.max(outermost, Math.hypot(x, y));
      seen[Math.floor(((Math.atan2(y, x) / (2 * Math.PI) + 1) % 1) * steps) % steps] = 1;
    }
  });
  if (seen.reduce((sum, each) => sum + each, 0) < leastSteps) return false;
  for (let vertex = 0; 3 * vertex < positions.length; vertex += 1) if (Math.hypot(from(vertex, u), from(vertex, v)) > outermost + same) return false;
  return true;
}

function isRoundAbout(surface: Surface, axis: TurnedAxis): boolean {
  switch (surface.kind) {
    case 'plane':
      return false;
    case 'sphere':
      return isOn(axis, surface.centre);
    case 'cone':
      return isOn(axis, surface.apex) && length(cross(surface.axis, axis.direction)) < same;
    case 'torus':
      return isOn(axis, surface.centre) && length(cross(surface.axis, axis.direction)) < same;
    case 'cylinder':
      return isOn(axis, surface.origin) && length(cross(surface.axis, axis.direction)) < same;
  }
}

/** True for a point on the axis. */
function isOn({ point, direction }: TurnedAxis, other: Vector3): boolean {
  const foot = add(point, scale(direction, dot(subtract(other, point), direction)));
  return length(subtract(other, foot)) < same;
}
