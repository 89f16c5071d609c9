import { add, cross, length, scale, subtract, unit, type Vector3 } from '../geometry/vector.js';
import type { Surface } from './model.js';

/** How far a point is from a surface (mm, positive outside) and the direction in which that distance grows fastest. */
export interface Offset {
  readonly distance: number;
  readonly normal: Vector3;
}

const someAcross = (axis: Vector3): Vector3 => {
  const other: Vector3 = Math.abs(axis[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0];
  return unit(cross(axis, other));
};

/** A point counted from an axis: height along it, distance from it, direction away from it (any, on the axis itself). */
function aboutAxis(point: Vector3, origin: Vector3, axis: Vector3): { height: number; radius: number; away: Vector3 } {
  // Asked for every vertex of every solid, many times: written out, for it must make no vectors on its way.
  const ax = axis[0];
  const ay = axis[1];
  const az = axis[2];
  const ox = point[0] - origin[0];
  const oy = point[1] - origin[1];
  const oz = point[2] - origin[2];
  const height = ox * ax + oy * ay + oz * az;
  const x = ox - ax * height;
  const y = oy - ay * height;
  const z = oz - az * height;
  const radius = Math.sqrt(x * x + y * y + z * z);
  const share = 1 / radius;
  return { height, radius, away: radius > 1e-12 ? [x * share, y * share, z * share] : someAcross(axis) };
}

const heightOver = (origin: Vector3, normal: Vector3, point: Vector3): number =>
  (point[0] - origin[0]) * normal[0] + (point[1] - origin[1]) * normal[1] + (point[2] - origin[2]) * normal[2];

/** Distance and normal of a surface at a point near it. */
export function offsetFrom(surface: Surface, point: Vector3): Offset {
  switch (surface.kind) {
    case 'plane':
      return { distance: heightOver(surface.point, surface.normal, point), normal: surface.normal };
    case 'cylinder': {
      const { radius, away } = aboutAxis(point, surface.origin, surface.axis);
      return { distance: radius - surface.radius, normal: away };
    }
    case 'cone': {
      const { height, radius, away } = aboutAxis(point, surface.apex, surface.axis);
      const angle = (surface.halfAngle * Math.PI) / 180;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      return { distance: radius * c - height * s, normal: subtract(scale(away, c), scale(surface.axis, s)) };
    }
    case 'torus': {
      const { height, radius, away } = aboutAxis(point, surface.centre, surface.axis);
      const out = radius - surface.major;
      const distance = Math.sqrt(out * out + height * height);
      if (distance < 1e-12) return { distance: -surface.minor, normal: surface.axis };
      const normal = add(scale(away, out / distance), scale(surface.axis, height / distance));
      return { distance: distance - surface.minor, normal };
    }
    case 'sphere': {
      const offset = subtract(point, surface.centre);
      const distance = length(offset);
      const normal: Vector3 = distance > 1e-12 ? scale(offset, 1 / distance) : [0, 0, 1];
      return { distance: distance - surface.radius, normal };
    }
  }
}

/** The same surface seen from the other side: only a plane has a side. */
export const reversed = (surface: Surface): Surface =>
  surface.kind === 'plane' ? { ...surface, normal: scale(surface.normal, -1) } : surface;
