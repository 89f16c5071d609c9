import { add, dot, length, scale, subtract, type Vector2, type Vector3 } from '../geometry/vector.js';
import type { Surface } from '../solid/model.js';

/** A straight axis: a point and a direction of length one. */
export interface Axis {
  readonly point: Vector3;
  readonly direction: Vector3;
}

/** What a surface of revolution shows in the half-plane (radius, height) of an axis. */
export type Profile =
  | { readonly kind: 'line'; readonly point: Vector2; readonly direction: Vector2 }
  | { readonly kind: 'circle'; readonly centre: Vector2; readonly radius: number };

/** Sizes and directions nearer than this count as equal, mm or radians. */
const SAME = 1e-7;

/** The axis of a surface of revolution that has just one. */
export function axisOf(surface: Surface): Axis | undefined {
  switch (surface.kind) {
    case 'cylinder':
      return { point: surface.origin, direction: surface.axis };
    case 'cone':
      return { point: surface.apex, direction: surface.axis };
    case 'torus':
      return { point: surface.centre, direction: surface.axis };
    case 'plane':
    case 'sphere':
      return undefined;
  }
}

/** The axis about which both surfaces are surfaces of revolution, if there is one. */
export function commonAxis(a: Surface, b: Surface): Axis | undefined {
  const direct = axisOf(a) ?? axisOf(b) ?? looseAxis(a, b) ?? looseAxis(b, a);
  return direct && profileOf(a, direct) && profileOf(b, direct) ? direct : undefined;
}

/** An axis for a sphere with a plane or another sphere. */
function looseAxis(a: Surface, b: Surface): Axis | undefined {
  if (a.kind !== 'sphere') return undefined;
  if (b.kind === 'plane') return { point: a.centre, direction: b.normal };
  if (b.kind !== 'sphere') return undefined;
  const offset = subtract(b.centre, a.centre);
  const size = length(offset);
  return size < SAME ? undefined : { point: a.centre, direction: scale(offset, 1 / size) };
}

/** The surface as a line or a circle of the half-plane about the axis; undefined when it does not turn about it. */
export function profileOf(surface: Surface, axis: Axis): Profile | undefined {
  if (surface.kind === 'plane') {
    const lean = dot(surface.normal, axis.direction);
    if (1 - Math.abs(lean) > SAME * SAME) return undefined;
    const height = dot(subtract(surface.point, axis.point), surface.normal) / lean;
    return { kind: 'line', point: [0, height], direction: [1, 0] };
  }
  if (surface.kind === 'sphere') {
    const { radius, height } = onAxis(axis, surface.centre);
    return radius > SAME ? undefined : { kind: 'circle', centre: [0, height], radius: surface.radius };
  }
  const own = axisOf(surface);
  if (!own) return undefined;
  const lean = dot(own.direction, axis.direction);
  const { radius, height } = onAxis(axis, own.point);
  if (radius > SAME || 1 - Math.abs(lean) > SAME * SAME) return undefined;
  if (surface.kind === 'cylinder') return { kind: 'line', point: [surface.radius, 0], direction: [0, 1] };
  if (surface.kind === 'torus') return { kind: 'circle', centre: [surface.major, height], radius: surface.minor };
  const angle = (surface.halfAngle * Math.PI) / 180;
  return { kind: 'line', point: [0, height], direction: [Math.sin(angle), Math.cos(angle) * Math.sign(lean)] };
}

/** A point of space counted about an axis. */
export function onAxis(axis: Axis, p: Vector3): { radius: number; height: number } {
  const offset = subtract(p, axis.point);
  const height = dot(offset, axis.direction);
  return { radius: length(subtract(offset, scale(axis.direction, height))), height };
}

/** The point of the axis at the height. */
export const atHeight = (axis: Axis, height: number): Vector3 => add(axis.point, scale(axis.direction, height));

/** The point common to both profiles nearest to `near`; where they only touch, the touching point. */
export function profilesMeet(a: Profile, b: Profile, near: Vector2): Vector2 | undefined {
  if (a.kind === 'line' && b.kind === 'line') return linesMeet(a, b);
  if (a.kind === 'circle' && b.kind === 'circle') return circlesMeet(a, b, near);
  return a.kind === 'line' ? lineMeetsCircle(a, b as Profile & { kind: 'circle' }, near) : lineMeetsCircle(b as Profile & { kind: 'line' }, a as Profile & { kind: 'circle' }, near);
}

function linesMeet(a: Profile & { kind: 'line' }, b: Profile & { kind: 'line' }): Vector2 | undefined {
  const turn = a.direction[0] * b.direction[1] - a.direction[1] * b.direction[0];
  if (Math.abs(turn) < SAME) return undefined;
  const [dx, dy] = [b.point[0] - a.point[0], b.point[1] - a.point[1]];
  const t = (dx * b.direction[1] - dy * b.direction[0]) / turn;
  return [a.point[0] + a.direction[0] * t, a.point[1] + a.direction[1] * t];
}

function lineMeetsCircle(line: Profile & { kind: 'line' }, circle: Profile & { kind: 'circle' }, near: Vector2): Vector2 | undefined {
  const [x, y] = line.direction;
  const along = (circle.centre[0] - line.point[0]) * x + (circle.centre[1] - line.point[1]) * y;
  const foot: Vector2 = [line.point[0] + x * along, line.point[1] + y * along];
  const gap = circle.radius ** 2 - (foot[0] - circle.centre[0]) ** 2 - (foot[1] - circle.centre[1]) ** 2;
  return besides(foot, line.direction, gap, circle.radius, near);
}

function circlesMeet(a: Profile & { kind: 'circle' }, b: Profile & { kind: 'circle' }, near: Vector2): Vector2 | undefined {
  const [dx, dy] = [b.centre[0] - a.centre[0], b.centre[1] - a.centre[1]];
  const apart = Math.sqrt(dx * dx + dy * dy);
  if (apart < SAME) return undefined;
  const along = (apart * apart + a.radius ** 2 - b.radius ** 2) / (2 * apart);
  const foot: Vector2 = [a.centre[0] + (dx / apart) * along, a.centre[1] + (dy / apart) * along];
  return besides(foot, [-dy / apart, dx / apart], a.radius ** 2 - along ** 2, Math.min(a.radius, b.radius), near);
}

/** Of the two points half a chord from its middle the one nearest to `near`; the middle itself where circles touch. */
function besides(foot: Vector2, direction: Vector2, gap: number, radius: number, near: Vector2): Vector2 | undefined {
  if (gap < -1e-6 * radius * radius) return undefined;
  const half = gap < 1e-9 * radius * radius ? 0 : Math.sqrt(gap);
  const side = (near[0] - foot[0]) * direction[0] + (near[1] - foot[1]) * direction[1] < 0 ? -half : half;
  return [foot[0] + direction[0] * side, foot[1] + direction[1] * side];
}
