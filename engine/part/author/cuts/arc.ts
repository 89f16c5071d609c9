import { indexOf, acrossOf, axisOf, pointAt, senseOf, vectorOf } from '../directions.js';
import type { Axis, Direction, Station } from '../../station.js';
import type { Vector2, Vector3 } from '../../../geometry/vector.js';

/**
 * Where an arc lies that is swung about a centre, which may stand off the part: through `middle` (two stations), with the
 * centre `radius` mm from there toward `toCentre`, as far as `ends`, two stations along the third axis.
 */
export interface ArcPlace {
  readonly middle: readonly [Station, Station];
  readonly toCentre: Direction;
  readonly ends: readonly [Station, Station];
  /** The way the cutter points. */
  readonly tool: Direction;
}

/** An arc in the plane of a frame along the cutter's axis: its centre, and the angles of its ends in radians, the lower first. */
export interface PlacedArc {
  readonly axis: Axis;
  readonly centre: Vector2;
  readonly angles: readonly [number, number];
  /** Direction of the middle from the centre, radians. */
  readonly middle: number;
  /** A point of the plane at an angle and a distance from the centre. */
  readonly at: (angle: number, distance: number) => Vector2;
  /** The same in space, at a height along the cutter's axis. */
  readonly inSpace: (point: Vector2, height: number) => Vector3;
}

/** Throws RangeError where the directions are not three different axes, or the ends lie beyond the circle or in the wrong order. */
export function placedArc(name: string, place: ArcPlace, radius: number): PlacedArc {
  const axis = axisOf(place.tool);
  const depth = axisOf(place.toCentre);
  const run = (['x', 'y', 'z'] as const).find((each) => each !== axis && each !== depth);
  if (run === undefined || place.ends.some((end) => end.axis !== run)) throw new RangeError(`the ends of the ${name} must lie along the axis that is square to cutter and centre`);
  const [low, high] = place.ends;
  if (!(low.value < high.value)) throw new RangeError(`the ${name} runs from ${low.value} to ${high.value}: the low end comes first`);
  const level: Station = { id: '', axis, name: '', value: 0, placing: { kind: 'datum' } };
  const middle = pointAt(...place.middle, level);
  const sense = senseOf(place.toCentre);
  const [u, v] = acrossOf(axis);
  const flat = (along: number, deep: number): Vector2 => (u === run ? [along, deep] : [deep, along]);
  const centre = flat(middle[indexOf(run)], middle[indexOf(depth)] + sense * radius);
  const toMiddle = vectorOf(place.toCentre);
  const middleAngle = Math.atan2(-toMiddle[indexOf(v)], -toMiddle[indexOf(u)]);
  const angleOf = (end: Station): number => {
    const share = (end.value - middle[indexOf(run)]) / radius;
    if (!(Math.abs(share) < 1)) throw new RangeError(`the ${name} ends beyond its circle`);
    const forward = vectorOf(`+${run}`);
    const turn = Math.cos(middleAngle) * forward[indexOf(v)] - Math.sin(middleAngle) * forward[indexOf(u)];
    return middleAngle + turn * Math.asin(share);
  };
  const angles = [angleOf(low), angleOf(high)].sort((a, b) => a - b) as [number, number];
  return {
    axis,
    centre,
    angles,
    middle: middleAngle,
    at: (angle, distance) => [centre[0] + distance * Math.cos(angle), centre[1] + distance * Math.sin(angle)],
    inSpace: (point, height) => {
      const placed: [number, number, number] = [0, 0, 0];
      placed[indexOf(u)] = point[0];
      placed[indexOf(v)] = point[1];
      placed[indexOf(axis)] = height;
      return placed;
    },
  };
}

/** The station of the middle on the axis along which the arc runs: the line on which middle and centre lie. */
export const lineOf = ({ middle, ends }: ArcPlace): Station => middle.find(({ axis }) => axis === ends[0].axis) ?? middle[0];
