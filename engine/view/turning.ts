import { add, dot, scale, subtract, type Vector3 } from '../geometry/vector.js';
import type { Surface } from '../solid/model.js';
import { offsetFrom } from '../solid/surface.js';
import { pointAt, type SpaceCurve } from './space-curve.js';

/** Steps in which a spline's stretch is searched. */
const STEPS = 4;

/**
 * Parameters, rising between `low` and `high`, at which a surface turns from facing the direction to facing away along a
 * curve that lies on it. In closed form for lines and ellipses on surfaces of the second degree, where an unscaled
 * normal runs linearly with the point, and for a torus's own circles.
 */
export function turningsOf(surface: Surface, curve: SpaceCurve, low: number, high: number, direction: Vector3): number[] {
  if (surface.kind === 'plane') return [];
  const facing = (t: number): number => dot(unscaledNormal(surface, pointAt(curve, t)), direction);
  switch (curve.kind) {
    case 'line': {
      const [a, b] = [facing(low), facing(high)];
      const still = Math.abs(b - a) < 1e-9 * (Math.abs(a) + Math.abs(b)) || Math.abs(a) + Math.abs(b) < 1e-9;
      return still || a * b >= 0 ? [] : [low + ((high - low) * a) / (a - b)];
    }
    case 'ellipse': {
      const third = (2 * Math.PI) / 3;
      const [a, b, c] = [facing(0), facing(third), facing(-third)];
      const level = (a + b + c) / 3;
      const cosine = (2 * a - b - c) / 3;
      const sine = (b - c) / Math.sqrt(3);
      const size = Math.sqrt(cosine * cosine + sine * sine);
      if (size < 1e-9 || Math.abs(level) > size * (1 - 1e-12)) return [];
      const middle = Math.atan2(sine, cosine);
      const half = Math.acos(-level / size);
      return [middle - half, middle + half].flatMap((t) => inRange(t, low, high)).sort((p, q) => p - q);
    }
    case 'spline':
      return searched(facing, low, high);
  }
}

/** The angle t with whole turns added so that it lies from low to (but not at) high, if it can. */
function inRange(t: number, low: number, high: number): number[] {
  const turn = 2 * Math.PI;
  const first = t + turn * Math.ceil((low - t) / turn);
  return first < high ? [first] : [];
}

/** Roots of a function by steps and halving. */
export function searched(value: (t: number) => number, low: number, high: number): number[] {
  const count = Math.max(1, Math.ceil((high - low) * STEPS));
  const roots: number[] = [];
  let [t0, a] = [low, value(low)];
  for (let i = 1; i <= count; i += 1) {
    const t1 = low + ((high - low) * i) / count;
    const b = value(t1);
    if (a * b < 0 && Math.abs(a) + Math.abs(b) > 1e-7) {
      let [from, to] = [t0, t1];
      for (let round = 0; round < 50; round += 1) {
        const middle = (from + to) / 2;
        if (value(middle) * a > 0) from = middle;
        else to = middle;
      }
      roots.push((from + to) / 2);
    }
    [t0, a] = [t1, b];
  }
  return roots;
}

/** A normal, of any positive length, that is a linear function of the point for surfaces of the second degree. */
function unscaledNormal(surface: Surface, p: Vector3): Vector3 {
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
