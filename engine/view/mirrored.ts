import type { Curve2 } from '../geometry/curve.js';
import type { Vector2 } from '../geometry/vector.js';
import { mirrorVector } from '../part/mirror.js';
import type { Axis } from '../part/station.js';
import type { AddedCurve, Camera, Curve3, View } from './model.js';

/**
 * What a camera sees of a mirror image is what the mirrored camera sees of the thing itself, with right and left exchanged:
 * the direction that runs to the right follows from the other two by the right hand, so it alone is reversed.
 */
export const mirrorCamera = (axis: Axis, { toward, up }: Camera): Camera => ({
  toward: mirrorVector(axis, toward),
  up: mirrorVector(axis, up),
});

/** A curve that a drawing adds, reversed along an axis of space. */
export const mirrorAdded = (axis: Axis, added: AddedCurve): AddedCurve => ({
  ...added,
  drawn: mirrorSpaceCurve(axis, added.drawn),
  tested: mirrorSpaceCurve(axis, added.tested),
});

function mirrorSpaceCurve(axis: Axis, curve: Curve3): Curve3 {
  if (curve.kind === 'line') return { ...curve, from: mirrorVector(axis, curve.from), to: mirrorVector(axis, curve.to) };
  const { centre, x, y } = curve;
  return { ...curve, centre: mirrorVector(axis, centre), x: mirrorVector(axis, x), y: mirrorVector(axis, y) };
}

/** A view with right and left exchanged, as the given camera sees it. */
export function mirrorView(view: View, camera: Camera): View {
  const { low, high } = view.box;
  return {
    camera,
    curves: view.curves.map((curve) => ({ ...curve, geometry: mirrorCurve(curve.geometry) })),
    box: { low: [0 - high[0], low[1]], high: [0 - low[0], high[1]] },
  };
}

/** Taken from zero, so that no minus zero comes about. */
const mirrorPoint = ([x, y]: Vector2): Vector2 => [0 - x, y];

function mirrorCurve(curve: Curve2): Curve2 {
  switch (curve.kind) {
    case 'line':
      return { ...curve, from: mirrorPoint(curve.from), to: mirrorPoint(curve.to) };
    case 'arc':
      return { ...curve, centre: mirrorPoint(curve.centre), ...mirrorStretch(curve) };
    case 'ellipse':
      return { ...curve, centre: mirrorPoint(curve.centre), rotation: 0 - curve.rotation, ...mirrorStretch(curve) };
    case 'spline':
      return { ...curve, points: curve.points.map(mirrorPoint) };
  }
}

/** Start and sweep of a round curve, degrees; the start within 0 to 360, as views have it. */
function mirrorStretch({ start, sweep }: { readonly start: number; readonly sweep: number }): { start: number; sweep: number } {
  if (Math.abs(sweep) === 360) return { start, sweep };
  const turned = 180 - start;
  return { start: turned - 360 * Math.floor(turned / 360), sweep: 0 - sweep };
}
