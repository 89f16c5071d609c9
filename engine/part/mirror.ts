import type { Frame } from '../geometry/frame.js';
import type { Vector3 } from '../geometry/vector.js';
import type { Cut, Ring, Size, PitchCircle } from './cut.js';
import type { Form } from './form.js';
import type { Part, SetUp } from './part.js';
import type { Axis, Direction, Station } from './station.js';

const images = new WeakMap<Part, Part>();

/**
 * The part of the other hand, made once: everything that has a place or a direction is reversed along the part's hand axis, through
 * the zero of that axis. Sizes, threads, texts and ids stay; a right-hand thread stays right-hand. Reversing twice gives
 * the part back. Frames of forms become left-handed.
 */
export function mirrorPart(part: Part): Part {
  const image = images.get(part) ?? reversedPart(part);
  images.set(part, image);
  images.set(image, part);
  return image;
}

function reversedPart(part: Part): Part {
  const mirror = mirrorAlong(part.handAxis);
  return {
    ...part,
    stock: { ...part.stock, forms: part.stock.forms.map(mirror.form) },
    stations: part.stations.map(mirror.station),
    setUps: part.setUps.map(mirror.setUp),
    operations: part.operations.map((operation) => ({ ...operation, cuts: operation.cuts.map(mirror.cut) })),
    attitude: {
      ...part.attitude,
      front: mirror.direction(part.attitude.front),
      up: mirror.direction(part.attitude.up),
    },
    hand: part.hand === 'right' ? 'left' : 'right',
  };
}

/** A form reversed along an axis, through the zero of that axis; twice gives the form back. */
export const mirrorForm = (axis: Axis, form: Form): Form => mirrorAlong(axis).form(form);

/** A point or a direction reversed along an axis. */
export const mirrorVector = (axis: Axis, vector: Vector3): Vector3 => mirrorAlong(axis).point(vector);

const AXES = { x: 0, y: 1, z: 2 } as const;

/** Minus zero would make a mirrored part unlike itself. */
const negative = (value: number): number => (value === 0 ? 0 : -value);

function mirrorAlong(axis: Axis) {
  const point = (p: Vector3): Vector3 => [
    axis === 'x' ? negative(p[AXES.x]) : p[0],
    axis === 'y' ? negative(p[AXES.y]) : p[1],
    axis === 'z' ? negative(p[AXES.z]) : p[2],
  ];
  const points = (list: readonly Vector3[]): Vector3[] => list.map(point);

  const direction = (given: Direction): Direction =>
    given[1] === axis ? (`${given[0] === '+' ? '-' : '+'}${axis}` as Direction) : given;

  const either = (given: Direction | Vector3): Direction | Vector3 =>
    typeof given === 'string' ? direction(given) : point(given);

  const frame = (given: Frame): Frame => ({
    origin: point(given.origin),
    x: point(given.x),
    y: point(given.y),
    z: point(given.z),
  });

  const form = (given: Form): Form =>
    given.kind === 'half-space'
      ? { ...given, point: point(given.point), normal: point(given.normal) }
      : { ...given, frame: frame(given.frame) };

  const station = (given: Station): Station => {
    if (given.axis !== axis) return given;
    const { placing } = given;
    return {
      ...given,
      value: negative(given.value),
      placing: placing.kind === 'from' ? { ...placing, sense: placing.sense === 1 ? -1 : 1 } : placing,
    };
  };

  /** Angles on a circle run the other way on the other hand. */
  const pitchCircle = (given: PitchCircle): PitchCircle => ({
    ...given,
    centre: point(given.centre),
    zero: point(given.zero),
    start: given.start === 0 ? 0 : 360 - given.start,
    zeroName: given.zeroName.endsWith(axis) ? `${given.zeroName.startsWith('+') ? '-' : '+'}${axis}` : given.zeroName,
  });

  const ring = <R extends Ring>(given: R): R => ({ ...given, point: point(given.point), axis: point(given.axis) });

  const size = (given: Size): Size => {
    switch (given.kind) {
      case 'hole':
      case 'tapping':
      case 'countersink':
      case 'counterbore':
        return {
          ...given,
          points: points(given.points),
          direction: point(given.direction),
          ...(given.lean === undefined ? {} : { lean: { ...given.lean, from: direction(given.lean.from), toward: direction(given.lean.toward) } }),
          ...(given.pitchCircle === undefined ? {} : { pitchCircle: pitchCircle(given.pitchCircle) }),
        };
      case 'diameter':
      case 'external-thread':
      case 'internal-thread':
        return { ...given, from: point(given.from), to: point(given.to) };
      case 'radius':
        return {
          ...given,
          centres: points(given.centres),
          toward: points(given.toward),
          ...(given.axis && { axis: point(given.axis) }),
          ...(given.ring && { ring: ring(given.ring) }),
        };
      case 'arc-slot':
      case 'arc-sides':
        return { ...given, centre: point(given.centre), axis: point(given.axis), middle: point(given.middle), ends: [point(given.ends[0]), point(given.ends[1])] };
      case 'angle':
        return { ...given, corner: point(given.corner), a: point(given.a), b: point(given.b) };
      case 'chamfer':
        return { ...given, ring: ring(given.ring), outward: point(given.outward) };
      case 'centre-hole':
        return { ...given, point: point(given.point), direction: point(given.direction) };
    }
  };

  const cut = (given: Cut): Cut => ({ ...given, forms: given.forms.map(form), sizes: given.sizes.map(size) });

  const setUp = (given: SetUp): SetUp => ({ ...given, up: either(given.up), right: either(given.right) });

  return { point, direction, form, station, cut, setUp };
}
