import { add, dot, scale, subtract, type Vector3 } from '../geometry/vector.js';
import type { Surface } from '../solid/model.js';
import { offsetFrom } from '../solid/surface.js';
import { pointAt, type SpaceCurve } from './space-curve.js';

/**
 * How the outward normal of a sheet runs along a curve on it, up to a positive factor: level + first cos t + second sin t
 * along an ellipse, level + first t along a line. So it is on planes and surfaces of the second degree, where an unscaled
 * normal is a linear function of the point, and along a torus's own circles.
 */
export interface NormalCourse {
  readonly level: Vector3;
  readonly first: Vector3;
  readonly second: Vector3;
}

/** The course for a sheet (its surface, and whether its material lies outside) along a line or an ellipse. */
export function normalCourse(surface: Surface, inward: boolean, curve: SpaceCurve & { kind: 'line' | 'ellipse' }): NormalCourse {
  const side = inward ? -1 : 1;
  const at = (t: number): Vector3 => scale(unscaledNormal(surface, pointAt(curve, t)), side);
  if (curve.kind === 'line') {
    const level = at(0);
    return { level, first: subtract(at(1), level), second: [0, 0, 0] };
  }
  const third = (2 * Math.PI) / 3;
  const [a, b, c] = [at(0), at(third), at(-third)];
  return {
    level: scale(add(a, add(b, c)), 1 / 3),
    first: scale(subtract(scale(a, 2), add(b, c)), 1 / 3),
    second: scale(subtract(b, c), 1 / Math.sqrt(3)),
  };
}

/** A normal, of any positive length, that is a linear function of the point for surfaces of the second degree. */
export function unscaledNormal(surface: Surface, p: Vector3): Vector3 {
  switch (surface.kind) {
    case 'plane':
      return surface.normal;
    case 'cylinder': {
      const q = subtract(p, surface.origin);
      return scale(subtract(q, scale(surface.axis, dot(q, surface.axis))), 1 / surface.radius);
    }
    case 'sphere':
      return scale(subtract(p, surface.centre), 1 / surface.radius);
    case 'cone': {
      const cosine = Math.cos((surface.halfAngle * Math.PI) / 180);
      const q = subtract(p, surface.apex);
      return add(scale(q, cosine * cosine), scale(surface.axis, -dot(q, surface.axis)));
    }
    case 'torus':
      return offsetFrom(surface, p).normal;
  }
}

const dotted = (v: Vector3, w: Vector3): number => v[0] * w[0] + v[1] * w[1] + v[2] * w[2];

/** Puts into `cuts` the parameters from `low` to before `high` at which the normal is square to `direction`. */
export function turnings(kind: 'line' | 'ellipse', course: NormalCourse, direction: Vector3, low: number, high: number, cuts: number[]): void {
  const level = dotted(course.level, direction);
  const first = dotted(course.first, direction);
  if (kind === 'line') {
    const [a, b] = [level + first * low, level + first * high];
    if (a * b < 0 && Math.abs(b - a) > 1e-9 * (Math.abs(a) + Math.abs(b)) && Math.abs(a) + Math.abs(b) > 1e-9) cuts.push(-level / first);
    return;
  }
  const second = dotted(course.second, direction);
  const size = Math.sqrt(first * first + second * second);
  if (size < 1e-9 || Math.abs(level) > size * (1 - 1e-12)) return;
  const middle = Math.atan2(second, first);
  const half = Math.acos(-level / size);
  for (const t of [middle - half, middle + half]) {
    const turned = t + 2 * Math.PI * Math.ceil((low - t) / (2 * Math.PI));
    if (turned < high) cuts.push(turned);
  }
}

/** The cosine between the normal at t and the direction. */
export function facing(kind: 'line' | 'ellipse', { level, first, second }: NormalCourse, direction: Vector3, t: number): number {
  const [f, g] = kind === 'line' ? [t, 0] : [Math.cos(t), Math.sin(t)];
  const x = level[0] + first[0] * f + second[0] * g;
  const y = level[1] + first[1] * f + second[1] * g;
  const z = level[2] + first[2] * f + second[2] * g;
  return (x * direction[0] + y * direction[1] + z * direction[2]) / Math.sqrt(x * x + y * y + z * z);
}
