import { add, dot, scale, subtract, type Vector3 } from '../geometry/vector.js';
import type { MassProperties } from './measure.js';
import type { Surface } from './model.js';

/**
 * What a surface says about how a solid may be turned: a direction, or a place. `kind` and `size` are equal for surfaces
 * that may take each other's place; `signed` is false where the direction and its reverse are the same.
 */
export interface Feature {
  readonly kind: string;
  readonly direction: Vector3;
  readonly signed: boolean;
}

/** Sizes counted from the facets' centroid are alike within this, mm. */
const COARSE = 0.05;

/** Directions that the surfaces of a solid set, from its centroid: normals, axes, and the ways to off-centre axes. */
export function featuresOf(surfaces: readonly Surface[], mass: MassProperties): Feature[] {
  const rounded = (value: number): string => String(Math.round(value / COARSE / 2));
  const features: Feature[] = [];
  const away = (kind: string, place: Vector3): void => {
    const offset = subtract(place, mass.centroid);
    const far = Math.hypot(...offset);
    if (far > 10 * COARSE) features.push({ kind: `${kind} ${rounded(far)}`, direction: scale(offset, 1 / far), signed: true });
  };
  for (const surface of surfaces) {
    switch (surface.kind) {
      case 'plane': {
        const far = dot(subtract(surface.point, mass.centroid), surface.normal);
        features.push({ kind: `plane ${rounded(far)}`, direction: surface.normal, signed: true });
        break;
      }
      case 'cylinder': {
        const kind = `cylinder ${surface.radius.toFixed(4)}`;
        features.push({ kind, direction: surface.axis, signed: false });
        away(kind, nearestOnAxis(surface.origin, surface.axis, mass.centroid));
        break;
      }
      case 'cone': {
        const kind = `cone ${surface.halfAngle.toFixed(4)}`;
        features.push({ kind, direction: surface.axis, signed: true });
        away(kind, surface.apex);
        break;
      }
      case 'torus': {
        const kind = `torus ${surface.major.toFixed(4)} ${surface.minor.toFixed(4)}`;
        features.push({ kind, direction: surface.axis, signed: false });
        away(kind, surface.centre);
        break;
      }
      case 'sphere':
        away(`sphere ${surface.radius.toFixed(4)}`, surface.centre);
    }
  }
  return features;
}

/** The point of a line nearest to a point. */
export const nearestOnAxis = (origin: Vector3, axis: Vector3, point: Vector3): Vector3 =>
  add(origin, scale(axis, dot(subtract(point, origin), axis)));
