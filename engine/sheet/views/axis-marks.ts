import { axisOf, indexOf, vectorOf } from '../../part/author/directions.js';
import type { Part } from '../../part/part.js';
import type { Axis, Direction } from '../../part/station.js';
import { add, dot, scale, type Vector3 } from '../../geometry/vector.js';
import type { View } from '../../view/model.js';
import { axesOfPart, parallel, type RoundAxis } from './axes-of-part.js';
import { alongPaper, circleAt, type Mark } from './marks.js';
import type { Orientation } from './orientation.js';
import type { SectionPlane } from './plan.js';

/** The station that an axis lies on, of those that a cut sets. */
function stationsAt(part: Part, round: RoundAxis, axis: Axis): readonly string[] {
  const value = round.from[indexOf(axis)];
  return part.stations
    .filter((station) => station.axis === axis && Math.abs(station.value - value) < 1e-6)
    .map((station) => station.id);
}

/** True where a section lays the axis open. */
export const laidOpen = (round: RoundAxis, section: SectionPlane | undefined): boolean =>
  section !== undefined && Math.abs(round.from[indexOf(section.axis)] - section.value) < 1e-6;

/** The axes that a view shows: circles from the end, axes in the plane of a section, turned axes from the side, lines of symmetry. */
export function axisMarks(part: Part, view: View, orientation: Orientation, section?: SectionPlane): readonly Mark[] {
  const marks: Mark[] = [];
  const eye = vectorOf(orientation.eye);
  const put = (direction: Direction, at: Vector3, low: number, high: number, stations: readonly string[]): void => {
    const axis = axisOf(direction);
    marks.push({ axis, value: at[indexOf(axis)], kind: 'axis', low, high, stations });
  };
  for (const round of axesOfPart(part)) {
    const u = alongPaper(round.from, orientation.right);
    const v = alongPaper(round.from, orientation.up);
    if (parallel(round.direction, eye)) {
      const radius = circleAt(view.curves, [u, v]);
      if (radius === undefined) continue;
      put(orientation.right, round.from, v - radius, v + radius, stationsAt(part, round, axisOf(orientation.right)));
      put(orientation.up, round.from, u - radius, u + radius, stationsAt(part, round, axisOf(orientation.up)));
    } else if (round.square !== undefined) {
      if (dot(round.square, eye) > -1 + 1e-9) continue;
      put(orientation.right, round.from, v - round.radius, v + round.radius, stationsAt(part, round, axisOf(orientation.right)));
      put(orientation.up, round.from, u - round.radius, u + round.radius, stationsAt(part, round, axisOf(orientation.up)));
    } else if (round.kind === 'turned' || (round.kind === 'hole' && laidOpen(round, section))) {
      for (const [along, across] of [
        [orientation.right, orientation.up],
        [orientation.up, orientation.right],
      ] as const) {
        if (!parallel(round.direction, vectorOf(along))) continue;
        const ends = [alongPaper(round.from, along), alongPaper(round.to, along)];
        put(across, round.from, Math.min(...ends), Math.max(...ends), stationsAt(part, round, axisOf(across)));
      }
    }
  }
  for (const size of part.operations.flatMap(({ cuts }) => cuts.flatMap(({ sizes }) => sizes))) {
    // The middle line of an arc is drawn: where it crosses the line on which its centre lies can be measured from.
    if (size.kind !== 'arc-slot' || !parallel(size.axis, eye)) continue;
    const apex = add(size.centre, scale(size.middle, size.radius.value));
    const half = size.width.value / 2;
    for (const [across, along] of [[orientation.right, orientation.up], [orientation.up, orientation.right]] as const) {
      const at = alongPaper(apex, along);
      const axis = axisOf(across);
      const stations = part.stations.filter((station) => station.axis === axis && Math.abs(station.value - apex[indexOf(axis)]) < 1e-6).map(({ id }) => id);
      put(across, apex, at - half, at + half, stations);
    }
  }
  return [...marks, ...symmetryMarks(part, view, orientation)];
}

/** Lines about which pairs stand are drawn over the whole view, and can be measured from. */
function symmetryMarks(part: Part, view: View, orientation: Orientation): readonly Mark[] {
  const abouts = new Set(part.stations.flatMap((station) => (station.placing.kind === 'pair' ? [station.placing.about] : [])));
  const marks: Mark[] = [];
  for (const station of part.stations) {
    if (!abouts.has(station.id) || station.placing.kind !== 'datum') continue;
    if (station.axis === axisOf(orientation.right))
      marks.push({ axis: station.axis, value: station.value, kind: 'axis', low: view.box.low[1], high: view.box.high[1], stations: [station.id] });
    if (station.axis === axisOf(orientation.up))
      marks.push({ axis: station.axis, value: station.value, kind: 'axis', low: view.box.low[0], high: view.box.high[0], stations: [station.id] });
  }
  return marks;
}

/** True when a direction of the part lies in the plane of the paper. */
export const inPlane = (direction: Vector3, orientation: Orientation): boolean =>
  Math.abs(dot(direction, vectorOf(orientation.eye))) < 1e-9;

