import { frameAlong, type Frame } from '../../engine/geometry/frame.js';
import type { ArcSegment, LineSegment, Outline, Segment } from '../../engine/geometry/outline.js';
import type { Vector2, Vector3 } from '../../engine/geometry/vector.js';
import type { HalfSpace, Prism, Revolution } from '../../engine/part/form.js';

export const line = (from: Vector2, to: Vector2, face: string): LineSegment => ({ kind: 'line', from, to, face });

export const arc = (
  from: Vector2,
  to: Vector2,
  centre: Vector2,
  turn: 'left' | 'right',
  face: string,
): ArcSegment => ({ kind: 'arc', from, to, centre, turn, face });

/** Straight pieces through the corners in turn; `faces` names them, or each is `side1`, `side2` and so on. */
export const polygon = (corners: readonly Vector2[], faces: readonly string[] = []): Outline =>
  corners.map((from, i): Segment => {
    const to = corners[(i + 1) % corners.length] ?? from;
    return line(from, to, faces[i] ?? `side${i + 1}`);
  });

/** A full circle as two half turns of one face. */
export const circleOutline = (centre: Vector2, radius: number, face: string): Outline => {
  const right: Vector2 = [centre[0] + radius, centre[1]];
  const left: Vector2 = [centre[0] - radius, centre[1]];
  return [arc(right, left, centre, 'left', face), arc(left, right, centre, 'left', face)];
};

export const worldFrame: Frame = { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };

/** A right-handed frame with the given z direction. */
export const frameTo = (origin: Vector3, z: Vector3): Frame =>
  frameAlong(origin, z, Math.abs(z[0]) < Math.abs(z[2]) ? [1, 0, 0] : [0, 0, 1]);

/** A block with its faces named left, right, front, back, bottom, top (x, y, z low and high). */
export const block = (low: Vector3, high: Vector3): Prism => ({
  kind: 'prism',
  frame: worldFrame,
  outline: polygon(
    [[low[0], low[1]], [high[0], low[1]], [high[0], high[1]], [low[0], high[1]]],
    ['front', 'right', 'back', 'left'],
  ),
  low: low[2],
  high: high[2],
  lowFace: 'bottom',
  highFace: 'top',
});

/** A turned form from its (radius, height) corners, counter-clockwise. */
export const turned = (frame: Frame, corners: readonly Vector2[], faces: readonly string[] = []): Revolution => ({
  kind: 'revolution',
  frame,
  outline: polygon(corners, faces),
});

/** A plain cylinder from the frame's origin along z. */
export const rod = (frame: Frame, radius: number, low: number, high: number): Revolution =>
  turned(frame, [[0, low], [radius, low], [radius, high], [0, high]], ['low', 'wall', 'high', 'axis']);

export const halfSpace = (point: Vector3, normal: Vector3, face = 'plane'): HalfSpace => ({
  kind: 'half-space',
  point,
  normal,
  face,
});
