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
  const cylinders = solid.surfaces.filter((surface) => surface.kind === 'cylinder').sort((a, b) => b.radius - a.radius);
  for (const { origin, axis } of cylinders) {
    const candidate: TurnedAxis = { point: origin, direction: axis };
    if (tried.some((other) => isOn(other, origin) && length(cross(other.direction, axis)) < same)) continue;
    tried.push(candidate);
    if (isTurned(solid, candidate)) return candidate;
  }
  return undefined;
}

function isTurned(solid: Solid, axis: TurnedAxis): boolean {
  const round = solid.surfaces.map((surface) => isRoundAbout(surface, axis));
  const across = Math.abs(axis.direction[0]) < 0.9 ? cross(axis.direction, [1, 0, 0]) : cross(axis.direction, [0, 1, 0]);
  const u = scale(across, 1 / length(across));
  const v = cross(axis.direction, u);
  const seen = new Uint8Array(steps);
  let [outermost, outermostRound] = [0, 0];
  for (let i = 0; i < solid.triangles.length; i += 1) {
    const vertex = solid.triangles[i]!;
    const arm = subtract([solid.positions[3 * vertex]!, solid.positions[3 * vertex + 1]!, solid.positions[3 * vertex + 2]!], axis.point);
    const [x, y] = [dot(arm, u), dot(arm, v)];
    const reach = Math.hypot(x, y);
    outermost = Math.max(outermost, reach);
    if (round[solid.faces[solid.faceOfTriangle[Math.trunc(i / 3)]!]!.surface] !== true) continue;
    outermostRound = Math.max(outermostRound, reach);
    seen[Math.floor(((Math.atan2(y, x) / (2 * Math.PI) + 1) % 1) * steps) % steps] = 1;
  }
  return outermost < outermostRound + same && seen.reduce((sum, each) => sum + each, 0) >= leastSteps;
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
