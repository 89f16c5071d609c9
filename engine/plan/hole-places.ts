import { dot, type Vector3 } from '../geometry/vector.js';
import type { CounterboreSize, CountersinkSize, HoleSize, Size, TappingSize } from '../part/cut.js';
import type { Operation, Part } from '../part/part.js';

/** A size that stands at holes. */
export type AtHoles = HoleSize | TappingSize | CountersinkSize | CounterboreSize;

const isAtHoles = (size: Size): size is AtHoles => size.kind === 'hole' || size.kind === 'tapping' || size.kind === 'countersink' || size.kind === 'counterbore';

/** The sizes of an operation that stand at holes. */
export const holeSizes = (operation: Operation): readonly AtHoles[] => operation.cuts.flatMap(({ sizes }) => sizes.filter(isAtHoles));

/** A place, the same text for the same point. */
export const keyOf = (point: Vector3): string => point.map((value) => value.toFixed(6)).join(' ');
/** A group of places, the same text in whatever order they come. */
export const placesKey = (points: readonly Vector3[]): string => points.map(keyOf).sort().join(' ; ');

/** The hole that was there before at the place of a mouth or a thread: its greatest diameter, mm. */
export function diameterThere(part: Part, operation: Operation, size: AtHoles): number | undefined {
  const here = keyOf(size.points[0]!);
  const sizes = part.operations.slice(0, part.operations.indexOf(operation) + 1).flatMap(holeSizes);
  const there = sizes.filter((other) => other.cut !== size.cut && (other.kind === 'hole' || other.kind === 'counterbore') && dot(other.direction, size.direction) > 1 - 1e-9 && other.points.some((point) => keyOf(point) === here));
  const diameters = there.flatMap((other) => (other.kind === 'tapping' ? [] : [other.diameter.value]));
  return diameters.length === 0 ? undefined : Math.max(...diameters);
}
