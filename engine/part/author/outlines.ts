import type { ArcSegment, Outline, Segment } from '../../geometry/outline.js';
import { cross2, distance2, subtract2, type Vector2 } from '../../geometry/vector.js';

/** A closed outline through corners, counter-clockwise; `faces[i]` names the piece from corner i to the next. */
export function polygonOutline(corners: readonly Vector2[], faces: readonly string[]): Outline {
  let area = 0;
  corners.forEach((corner, i) => {
    area += cross2(corner, corners[(i + 1) % corners.length]!);
  });
  const segments: Segment[] = corners.map((from, i) => ({
    kind: 'line',
    from,
    to: corners[(i + 1) % corners.length]!,
    face: faces[i]!,
  }));
  return area >= 0 ? segments : reversed(segments);
}

/** The same outline run the other way. */
export const reversed = (outline: readonly Segment[]): Segment[] =>
  [...outline].reverse().map((segment) =>
    segment.kind === 'line'
      ? { ...segment, from: segment.to, to: segment.from }
      : { ...segment, from: segment.to, to: segment.from, turn: segment.turn === 'left' ? 'right' : 'left' },
  );

/** A rectangle with some corners rounded. Faces: `low u`, `high u`, `low v`, `high v`, and `corner` for the roundings. */
export function roundedRectangle(
  low: Vector2,
  high: Vector2,
  radius: number,
  rounded: { readonly lowLow: boolean; readonly highLow: boolean; readonly highHigh: boolean; readonly lowHigh: boolean },
  faces: { readonly lowU: string; readonly highU: string; readonly lowV: string; readonly highV: string },
): Outline {
  const corners: { at: Vector2; round: boolean; before: Vector2; after: Vector2 }[] = [
    { at: low, round: rounded.lowLow, before: [0, -1], after: [1, 0] },
    { at: [high[0], low[1]], round: rounded.highLow, before: [1, 0], after: [0, 1] },
    { at: high, round: rounded.highHigh, before: [0, 1], after: [-1, 0] },
    { at: [low[0], high[1]], round: rounded.lowHigh, before: [-1, 0], after: [0, -1] },
  ];
  const sides = [faces.lowV, faces.highU, faces.highV, faces.lowU];
  const segments: Segment[] = [];
  const startOf = (i: number): Vector2 => {
    const corner = corners[i % 4]!;
    return corner.round ? offset(corner.at, corner.after, radius) : corner.at;
  };
  const endOf = (i: number): Vector2 => {
    const corner = corners[i % 4]!;
    return corner.round ? offset(corner.at, corner.before, -radius) : corner.at;
  };
  for (let i = 0; i < 4; i += 1) {
    const corner = corners[i]!;
    if (corner.round) {
      const centre = offset(offset(corner.at, corner.before, -radius), corner.after, radius);
      segments.push({ kind: 'arc', from: endOf(i), to: startOf(i), centre, turn: 'left', face: 'corner' });
    }
    const from = startOf(i);
    const to = endOf(i + 1);
    if (distance2(from, to) > 1e-9) segments.push({ kind: 'line', from, to, face: sides[i]! });
  }
  return segments;
}

const offset = (point: Vector2, along: Vector2, distance: number): Vector2 => [
  point[0] + along[0] * distance,
  point[1] + along[1] * distance,
];

/** Middle of an arc, on the arc. */
export function arcMiddle(arc: ArcSegment): Vector2 {
  const a = subtract2(arc.from, arc.centre);
  const start = Math.atan2(a[1], a[0]);
  const b = subtract2(arc.to, arc.centre);
  let sweep = Math.atan2(b[1], b[0]) - start;
  if (arc.turn === 'left' && sweep <= 0) sweep += 2 * Math.PI;
  if (arc.turn === 'right' && sweep >= 0) sweep -= 2 * Math.PI;
  const radius = Math.hypot(a[0], a[1]);
  const middle = start + sweep / 2;
  return [arc.centre[0] + radius * Math.cos(middle), arc.centre[1] + radius * Math.sin(middle)];
}
