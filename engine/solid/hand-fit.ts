import { cross, dot, length, scale, subtract, unit, type Vector3 } from '../geometry/vector.js';
import { nearestOnAxis } from './hand-features.js';
import { apply, type Matrix3 } from './matrix.js';
import type { MassProperties } from './measure.js';
import type { Solid, Surface } from './model.js';
import type { SurfaceTable } from './surface-table.js';
import { moveSurface, type Motion } from './transform.js';

/** How well a mirrored solid lies on the solid itself. */
export interface Fit {
  readonly motion: Motion;
  /** For each surface, whether its image falls on a surface, and an image falls on it. */
  readonly matched: readonly boolean[];
  /** Area of the faces whose surfaces fall on nothing, mm2. */
  readonly unmatched: number;
}

/** Groups of like surfaces larger than this are compared by their middle only. */
const LARGE = 24;

/** A place along a direction that would bring two surfaces together, with the area that speaks for it. */
interface Vote {
  readonly direction: Vector3;
  readonly shift: number;
  readonly weight: number;
}

/**
 * The shift after `matrix` that brings most surface area of the mirrored solid on to the solid: planes and axes vote for
 * the shifts that would bring them together. Where nothing votes, the centroids are brought together.
 */
export function fitMirrored(matrix: Matrix3, table: SurfaceTable, areas: readonly number[], mass: MassProperties): Fit {
  const votes = votesFor(matrix, table.surfaces, areas, mass.centroid);
  const shift = shiftOf(votes, subtract(mass.centroid, apply(matrix, mass.centroid)));
  const motion = { matrix, shift };
  const matched = matchSurfaces(motion, table);
  const unmatched = areas.reduce((sum, area, i) => sum + (matched[i] === true ? 0 : area), 0);
  return { motion, matched, unmatched };
}

/** Area of the facets on each surface, mm2. */
export function surfaceAreas(solid: Solid, faceAreas: readonly number[]): number[] {
  const areas = solid.surfaces.map(() => 0);
  solid.faces.forEach((face, i) => {
    areas[face.surface] = (areas[face.surface] ?? 0) + (faceAreas[i] ?? 0);
  });
  return areas;
}

function votesFor(
  matrix: Matrix3,
  surfaces: readonly Surface[],
  areas: readonly number[],
  centroid: Vector3,
): Vote[] {
  const votes: Vote[] = [];
  const vote = (direction: Vector3, shift: number, weight: number): void => {
    if (weight > 0) votes.push({ direction, shift, weight });
  };
  const places = new Map<string, { place: Vector3; axis?: Vector3; area: number }[]>();
  surfaces.forEach((surface, i) => {
    if (surface.kind === 'plane') return;
    const { key, ...rest } = placeOf(surface, centroid);
    places.set(key, [...(places.get(key) ?? []), { ...rest, area: areas[i] ?? 0 }]);
  });
  for (const group of places.values()) {
    const members = group.length > LARGE ? [middleOf(group)] : group;
    for (const a of members) {
      const image = apply(matrix, a.place);
      const imageAxis = a.axis && apply(matrix, a.axis);
      for (const b of members) {
        const way = subtract(b.place, image);
        const weight = Math.min(a.area, b.area);
        if (b.axis === undefined || imageAxis === undefined) {
          for (const axis of axes) vote(axis, dot(way, axis), weight);
        } else if (length(cross(imageAxis, b.axis)) < 1e-6) {
          for (const axis of axes) if (Math.abs(dot(axis, b.axis)) < 1e-6) vote(axis, dot(way, axis), weight);
        }
      }
    }
  }
  const planes = surfaces.flatMap((surface, i) => (surface.kind === 'plane' ? [{ surface, area: areas[i] ?? 0 }] : []));
  for (const a of planes) {
    const normal = apply(matrix, a.surface.normal);
    const image = dot(apply(matrix, a.surface.point), normal);
    for (const b of planes) {
      if (dot(normal, b.surface.normal) < 1 - 1e-12) continue;
      vote(b.surface.normal, dot(b.surface.point, b.surface.normal) - image, Math.min(a.area, b.area));
    }
  }
  return votes;
}

const axes: readonly Vector3[] = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];

/** A curved surface's place, with the axis along which it is not fixed. */
function placeOf(
  surface: Exclude<Surface, { kind: 'plane' }>,
  centroid: Vector3,
): { key: string; place: Vector3; axis?: Vector3 } {
  switch (surface.kind) {
    case 'cylinder': {
      const place = nearestOnAxis(surface.origin, surface.axis, centroid);
      return { key: `cylinder ${surface.radius.toFixed(5)}`, place, axis: surface.axis };
    }
    case 'cone':
      return { key: `cone ${surface.halfAngle.toFixed(5)}`, place: surface.apex };
    case 'torus':
      return { key: `torus ${surface.major.toFixed(5)} ${surface.minor.toFixed(5)}`, place: surface.centre };
    case 'sphere':
      return { key: `sphere ${surface.radius.toFixed(5)}`, place: surface.centre };
  }
}

function middleOf(group: readonly { place: Vector3; axis?: Vector3; area: number }[]) {
  const place = [0, 1, 2].map((k) => group.reduce((sum, item) => sum + (item.place[k] ?? 0), 0) / group.length);
  const area = group.reduce((sum, item) => sum + item.area, 0);
  const axis = group[0]?.axis;
  return { place: place as unknown as Vector3, area, ...(axis && { axis }) };
}

/** Takes the heaviest votes in turn until three independent directions are set; the rest comes from `fallback`. */
function shiftOf(votes: readonly Vote[], fallback: Vector3): Vector3 {
  const totals = new Map<string, Vote>();
  for (const { direction, shift, weight } of votes) {
    const lead = direction.find((component) => Math.abs(component) > 1e-6) ?? 1;
    const sense = Math.sign(lead);
    const key = [...direction.map((component) => component * sense * 1e5), shift * sense * 1e4].map((v) => Math.round(v) + 0).join(' ');
    const known = totals.get(key);
    totals.set(key, { direction: scale(direction, sense), shift: shift * sense, weight: weight + (known?.weight ?? 0) });
  }
  const heaviest = [...totals.values()].sort((a, b) => b.weight - a.weight);
  let result: Vector3 = fallback;
  const fixed: Vector3[] = [];
  for (const { direction, shift } of heaviest) {
    // The part of the direction that is still free; moving along it leaves what is fixed.
    const free = fixed.reduce((left, f) => subtract(left, scale(f, dot(left, f))), direction);
    if (length(free) < 0.05) continue;
    const way = unit(free);
    const move = (shift - dot(result, direction)) / dot(way, direction);
    result = [result[0] + way[0] * move, result[1] + way[1] * move, result[2] + way[2] * move];
    fixed.push(way);
    if (fixed.length === 3) break;
  }
  return result;
}

/** For each surface, whether its image falls on a surface of the solid, and the image of one falls on it. */
function matchSurfaces(motion: Motion, table: SurfaceTable): boolean[] {
  const struck = table.surfaces.map(() => false);
  const falls = table.surfaces.map((surface) => {
    const onto = table.find(moveSurface(motion, surface), MATCH, 1);
    if (onto !== undefined) struck[onto] = true;
    return onto !== undefined;
  });
  return falls.map((fall, i) => fall && struck[i] === true);
}

/** Surfaces nearer than this match, mm; directions likewise, on a lever of one millimetre. */
const MATCH = 1e-5;
