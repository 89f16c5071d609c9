import { add, cross, dot, length, scale, subtract, type Vector3 } from '../geometry/vector.js';
import type { Surface } from '../solid/model.js';
import { circleAbout, type SpaceCurve } from './space-curve.js';

/** The straight line of a cylinder or a cone on which it turns from the eye; of the two the one on the side of `near`. */
export function ruledSilhouette(surface: Surface & { kind: 'cylinder' | 'cone' }, near: Vector3, toEye: Vector3): SpaceCurve & { kind: 'line' } {
  const { axis } = surface;
  const along = dot(toEye, axis);
  const level = subtract(toEye, scale(axis, along));
  const tilt = length(level);
  const side = cross(axis, scale(level, 1 / tilt));
  if (surface.kind === 'cylinder') {
    const sign = dot(subtract(near, surface.origin), side) < 0 ? -1 : 1;
    return { kind: 'line', point: add(surface.origin, scale(side, sign * surface.radius)), direction: axis };
  }
  const angle = (surface.halfAngle * Math.PI) / 180;
  const cosine = Math.max(-1, Math.min(1, (Math.tan(angle) * along) / tilt));
  const sine = Math.sqrt(1 - cosine * cosine) * (dot(subtract(near, surface.apex), side) < 0 ? -1 : 1);
  const away = add(scale(level, cosine / tilt), scale(side, sine));
  return { kind: 'line', point: surface.apex, direction: add(scale(axis, Math.cos(angle)), scale(away, Math.sin(angle))) };
}

/** The great circle square to the line of sight. */
export const sphereSilhouette = (surface: Surface & { kind: 'sphere' }, toEye: Vector3): SpaceCurve & { kind: 'ellipse' } =>
  circleAbout(surface.centre, toEye, surface.radius);
