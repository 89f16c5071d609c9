import type { Curve2 } from '../../geometry/curve.js';
import { axisOf, indexOf, senseOf } from '../../part/author/directions.js';
import type { Cut } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import type { Axis, Direction } from '../../part/station.js';
import type { Solid } from '../../solid/model.js';
import type { ViewCurve } from '../../view/model.js';
import type { Vector3 } from '../../geometry/vector.js';

/**
 * A coordinate that can be read off a view: an edge seen square to the axis, or the axis of something round or symmetrical,
 * for which a centre line is drawn. `low` and `high` are where its ink begins and ends, across the axis, in view mm.
 */
export interface Mark {
  readonly axis: Axis;
  /** The part's coordinate, mm. */
  readonly value: number;
  readonly kind: 'edge' | 'axis';
  readonly low: number;
  readonly high: number;
  /** Stations whose own face or hole this is; empty where it only lies at the coordinate. */
  readonly stations: readonly string[];
}

const tolerance = 1e-5;

/** The cut with an id, wherever it stands in the operations. */
export function cutsById(part: Part): ReadonlyMap<string, Cut> {
  return new Map(part.operations.flatMap((operation) => operation.cuts.map((cut) => [cut.id, cut] as const)));
}

/** For each surface of a solid, the stations that faces on it stand for. */
export function stationsOfSurfaces(part: Part, solid: Solid): readonly (readonly string[])[] {
  const cuts = cutsById(part);
  const lists: Set<string>[] = solid.surfaces.map(() => new Set<string>());
  for (const { tag, surface } of solid.faces) {
    const face = tag.cut === 'stock' ? part.stock.faces[tag.face] : cuts.get(tag.cut)?.faces[tag.face];
    for (const station of face?.stations ?? []) lists[surface]!.add(station);
    for (const station of boundsOf(face)) lists[surface]!.add(station);
  }
  return lists.map((list) => [...list].sort());
}

/** Stations where a face begins and ends; the stock's faces have none. */
export const boundsOf = (face: { readonly stations: readonly string[]; readonly bounds?: readonly string[] } | undefined): readonly string[] => face?.bounds ?? [];

/** All edges of a view that run square to one of its axes, as marks on that axis. */
export function edgeMarks(
  curves: readonly ViewCurve[],
  right: Direction,
  up: Direction,
  stations: readonly (readonly string[])[],
): readonly Mark[] {
  const marks: Mark[] = [];
  const put = (direction: Direction, paper: number, low: number, high: number, curve: ViewCurve): void => {
    const axis = axisOf(direction);
    const value = paper * senseOf(direction);
    const names = new Set(curve.surfaces.flatMap((surface) => stations[surface] ?? []).filter((id) => id.startsWith(`${axis}:`)));
    marks.push({ axis, value, kind: 'edge', low, high, stations: [...names] });
  };
  for (const curve of curves) {
    if (!curve.visible || curve.role === 'thread' || curve.name !== undefined) continue;
    const { geometry } = curve;
    if (geometry.kind !== 'line') continue;
    const [a, b] = [geometry.from, geometry.to];
    if (Math.abs(a[0] - b[0]) < tolerance) put(right, a[0], Math.min(a[1], b[1]), Math.max(a[1], b[1]), curve);
    if (Math.abs(a[1] - b[1]) < tolerance) put(up, a[1], Math.min(a[0], b[0]), Math.max(a[0], b[0]), curve);
  }
  return marks;
}

/** Where a point of the part stands along a direction of the paper. */
export const alongPaper = (point: Vector3, direction: Direction): number => point[indexOf(axisOf(direction))] * senseOf(direction);

/**
 * The full circle or arc of a view about a centre, if one is seen there: its greatest radius. `radii` are those that count;
 * absent, all do.
 */
export function circleAt(curves: readonly ViewCurve[], centre: readonly [number, number], radii?: readonly number[]): number | undefined {
  let radius: number | undefined;
  for (const curve of curves) {
    const geometry: Curve2 = curve.geometry;
    if (!curve.visible || geometry.kind !== 'arc' || curve.name !== undefined) continue;
    if (radii !== undefined && !radii.some((each) => Math.abs(each - geometry.radius) < tolerance)) continue;
    if (Math.hypot(geometry.centre[0] - centre[0], geometry.centre[1] - centre[1]) > tolerance) continue;
    if (Math.abs(geometry.sweep) < 60) continue;
    radius = Math.max(radius ?? 0, geometry.radius);
  }
  return radius;
}
