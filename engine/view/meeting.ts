import { add, cross, dot, length, scale, subtract, type Vector3 } from '../geometry/vector.js';
import type { Surface } from '../solid/model.js';
import { atHeight, axisOf, commonAxis, onAxis, profileOf, profilesMeet } from './profile.js';
import { circleAbout, type SpaceCurve } from './space-curve.js';

type Of<K extends Surface['kind']> = Surface & { readonly kind: K };

/** A line or an ellipse without ends. */
export type PlainCurve = SpaceCurve & { readonly kind: 'line' | 'ellipse' };

/** Sines below this are taken as zero, and lengths in mm. */
const NONE = 1e-7;

/**
 * The line, circle or ellipse in which two exact surfaces meet near the point `near`, where the meeting is such a curve:
 * else undefined (a cylinder through another, a plane that cuts a cone in a hyperbola, ...).
 */
export function meeting(a: Surface, b: Surface, near: Vector3): PlainCurve | undefined {
  if (a.kind === 'plane' && b.kind === 'plane') return planesMeet(a, b);
  return coaxial(a, b, near) ?? oneSided(a, b, near) ?? oneSided(b, a, near);
}

function coaxial(a: Surface, b: Surface, near: Vector3): PlainCurve | undefined {
  const axis = commonAxis(a, b);
  if (!axis) return undefined;
  const [p, q] = [profileOf(a, axis), profileOf(b, axis)];
  if (!p || !q) return undefined;
  const place = onAxis(axis, near);
  const met = profilesMeet(p, q, [place.radius, place.height]);
  return met && Math.abs(met[0]) > NONE ? circleAbout(atHeight(axis, met[1]), axis.direction, Math.abs(met[0])) : undefined;
}

function oneSided(a: Surface, b: Surface, near: Vector3): PlainCurve | undefined {
  if (a.kind === 'plane') {
    if (b.kind === 'cylinder') return planeCylinder(a, b, near);
    if (b.kind === 'cone') return planeCone(a, b, near);
    if (b.kind === 'torus') return planeThroughTorus(a, b, near);
  }
  if (a.kind === 'cylinder' && b.kind === 'cylinder') return cylinders(a, b, near);
  if (b.kind === 'torus' && (a.kind === 'cylinder' || a.kind === 'sphere')) return aroundTube(a, b, near);
  return undefined;
}

/** At right angles to both normals through the point of both planes nearest to their given points. */
function planesMeet(a: Of<'plane'>, b: Of<'plane'>): PlainCurve | undefined {
  const along = cross(a.normal, b.normal);
  const size = length(along);
  if (size < NONE) return undefined;
  const direction = scale(along, 1 / size);
  const towardB = cross(direction, a.normal);
  const gap = dot(subtract(b.point, a.point), b.normal);
  return { kind: 'line', point: add(a.point, scale(towardB, gap / dot(towardB, b.normal))), direction };
}

function planeCylinder(plane: Of<'plane'>, cylinder: Of<'cylinder'>, near: Vector3): PlainCurve | undefined {
  const { origin, axis, radius } = cylinder;
  const lean = dot(plane.normal, axis);
  const gap = dot(subtract(plane.point, origin), plane.normal);
  if (Math.abs(lean) < NONE) {
    const foot = add(origin, scale(plane.normal, gap));
    return chordLine(foot, cross(axis, plane.normal), axis, radius * radius - gap * gap, radius, near);
  }
  const across = cross(axis, plane.normal);
  const size = length(across);
  const minor = scale(across, 1 / size);
  const centre = add(origin, scale(axis, gap / lean));
  return { kind: 'ellipse', centre, u: scale(minor, radius), v: scale(cross(plane.normal, minor), radius / Math.abs(lean)) };
}

/** A line along `direction` that stands to the side of `near`, half a chord from `foot`; at the foot where it only touches. */
function chordLine(foot: Vector3, side: Vector3, direction: Vector3, gap: number, radius: number, near: Vector3): PlainCurve | undefined {
  if (gap < -1e-6 * radius * radius) return undefined;
  const half = gap < 1e-9 * radius * radius ? 0 : Math.sqrt(gap);
  const sign = dot(subtract(near, foot), side) < 0 ? -1 : 1;
  return { kind: 'line', point: add(foot, scale(side, (sign * half) / length(side))), direction };
}

/** Generators where the plane holds the apex; an ellipse where it cuts all of one half; else undefined. */
function planeCone(plane: Of<'plane'>, cone: Of<'cone'>, near: Vector3): PlainCurve | undefined {
  const { apex, axis, halfAngle } = cone;
  const angle = (halfAngle * Math.PI) / 180;
  const lean = dot(plane.normal, axis);
  const gap = dot(subtract(plane.point, apex), plane.normal);
  const tilted = subtract(plane.normal, scale(axis, lean));
  const tilt = length(tilted);
  if (tilt < NONE) return undefined;
  const aside = scale(tilted, 1 / tilt);
  if (Math.abs(gap) < NONE) {
    // A generator is axis cos + (aside p + other q) sin; square to the plane's normal gives p.
    const p = -(lean * Math.cos(angle)) / (tilt * Math.sin(angle));
    if (Math.abs(p) > 1) return undefined;
    const other = cross(axis, aside);
    const q = Math.sqrt(1 - p * p) * (dot(subtract(near, apex), other) < 0 ? -1 : 1);
    const direction = add(scale(axis, Math.cos(angle)), scale(add(scale(aside, p), scale(other, q)), Math.sin(angle)));
    return { kind: 'line', point: apex, direction };
  }
  const ends = [1, -1].map((side) => {
    const generator = add(scale(axis, Math.cos(angle)), scale(aside, side * Math.sin(angle)));
    return scale(generator, gap / dot(generator, plane.normal));
  }) as [Vector3, Vector3];
  const heights = ends.map((end) => dot(end, axis)) as [number, number];
  if (!(heights[0] > NONE && heights[1] > NONE) || Math.max(...heights) > 1e6) return undefined;
  const major = scale(subtract(ends[0], ends[1]), 0.5);
  // The lesser half axis is the mean proportional of the cone's radii at the two ends of the greater.
  const minor = Math.tan(angle) * Math.sqrt(heights[0] * heights[1]);
  const centre = add(apex, scale(add(ends[0], ends[1]), 0.5));
  return { kind: 'ellipse', centre, u: major, v: scale(cross(axis, aside), minor) };
}

/** A plane through a torus's axis cuts its tube in circles. */
function planeThroughTorus(plane: Of<'plane'>, torus: Of<'torus'>, near: Vector3): PlainCurve | undefined {
  if (Math.abs(dot(plane.normal, torus.axis)) > NONE) return undefined;
  if (Math.abs(dot(subtract(torus.centre, plane.point), plane.normal)) > NONE) return undefined;
  const side = cross(torus.axis, plane.normal);
  const sign = dot(subtract(near, torus.centre), side) < 0 ? -1 : 1;
  return circleAbout(add(torus.centre, scale(side, (sign * torus.major) / length(side))), plane.normal, torus.minor);
}

/** A cylinder or a sphere of the tube's own radius that touches a torus round its tube. */
function aroundTube(a: Of<'cylinder'> | Of<'sphere'>, torus: Of<'torus'>, near: Vector3): PlainCurve | undefined {
  if (Math.abs(a.radius - torus.minor) > NONE) return undefined;
  const offset = subtract(near, torus.centre);
  const flat = subtract(offset, scale(torus.axis, dot(offset, torus.axis)));
  const size = length(flat);
  if (size < NONE) return undefined;
  if (a.kind === 'sphere') {
    const core = subtract(a.centre, torus.centre);
    if (Math.abs(dot(core, torus.axis)) > NONE || Math.abs(length(core) - torus.major) > NONE) return undefined;
    return circleAbout(a.centre, cross(torus.axis, scale(core, 1 / length(core))), torus.minor);
  }
  if (Math.abs(dot(a.axis, torus.axis)) > NONE) return undefined;
  const out = cross(a.axis, torus.axis);
  const centre = add(torus.centre, scale(out, dot(offset, out) < 0 ? -torus.major : torus.major));
  return length(cross(subtract(centre, a.origin), a.axis)) > 1e-6 ? undefined : circleAbout(centre, a.axis, torus.minor);
}

/** Generators of two parallel cylinders; the two ellipses of equal cylinders whose axes cross. */
function cylinders(a: Of<'cylinder'>, b: Of<'cylinder'>, near: Vector3): PlainCurve | undefined {
  const turned = length(cross(a.axis, b.axis));
  const between = subtract(b.origin, a.origin);
  if (turned < NONE) {
    const apartVector = subtract(between, scale(a.axis, dot(between, a.axis)));
    const apart = length(apartVector);
    if (apart < NONE) return undefined;
    const along = (apart * apart + a.radius ** 2 - b.radius ** 2) / (2 * apart);
    const toward = scale(apartVector, 1 / apart);
    const foot = add(a.origin, scale(toward, along));
    return chordLine(foot, cross(a.axis, toward), a.axis, a.radius ** 2 - along ** 2, Math.min(a.radius, b.radius), near);
  }
  const planes = evenPlanes(a, b);
  if (!planes) return undefined;
  const [first, second] = planes;
  const far = (plane: Of<'plane'>): number => Math.abs(dot(subtract(near, plane.point), plane.normal));
  return planeCylinder(far(first) <= far(second) ? first : second, a, near);
}

/** For equal cylinders whose axes cross: the two planes in which they meet. */
export function evenPlanes(a: Surface, b: Surface): readonly [Of<'plane'>, Of<'plane'>] | undefined {
  if (a.kind !== 'cylinder' || b.kind !== 'cylinder' || Math.abs(a.radius - b.radius) > NONE) return undefined;
  const normal = cross(a.axis, b.axis);
  const turned = length(normal);
  const between = subtract(b.origin, a.origin);
  if (turned < 1e-3 || Math.abs(dot(between, normal)) > NONE * turned) return undefined;
  const along = dot(cross(between, b.axis), normal) / (turned * turned);
  const point = add(a.origin, scale(a.axis, along));
  const plane = (v: Vector3): Of<'plane'> => ({ kind: 'plane', point, normal: scale(v, 1 / length(v)) });
  return [plane(subtract(a.axis, b.axis)), plane(add(a.axis, b.axis))];
}

/** True where the surface has an axis and the point lies on it: the tip of a cone. */
export const isTip = (surface: Surface, p: Vector3): boolean => {
  const axis = axisOf(surface);
  return axis !== undefined && surface.kind === 'cone' && length(subtract(p, surface.apex)) < 1e-4;
};
