import { vectorOf } from '../../part/author/directions.js';
import type { Part, SetUp } from '../../part/part.js';
import { machineAxes } from '../../plan/machine-frame.js';
import type { Solid } from '../../solid/model.js';
import { project } from '../../view/project.js';
import { cameraFrom } from '../../view/camera.js';
import type { Camera, View } from '../../view/model.js';
import { add, cross, type Vector2 } from '../../geometry/vector.js';
import { pointAtAngle } from '../say/extremes.js';
import type { ViewCurve } from '../../view/model.js';

/** An isometric look at the work as it sits on the machine, from the right, from above and from where one stands. */
export function machineCamera(setUp: SetUp): Camera {
  const { right, up, near } = machineAxes(setUp);
  return cameraFrom(add(add(right, up), near), up);
}

/** An isometric picture of a solid in the attitude of the print: front, right side and top. */
export function printCamera(part: Part): Camera {
  const front = vectorOf(part.attitude.front);
  const up = vectorOf(part.attitude.up);
  return cameraFrom(add(add(cross(up, front), up), front), up);
}

/** The picture of a state of the part: only what is seen. */
export const pictureOf = (solid: Solid, camera: Camera): View => project(solid, camera, { hidden: false, smooth: true });

/** Size of a curve on paper for choosing among curves: length, near enough. */
export function sizeOf({ geometry }: ViewCurve): number {
  if (geometry.kind === 'line') return Math.hypot(geometry.from[0] - geometry.to[0], geometry.from[1] - geometry.to[1]);
  if (geometry.kind === 'arc') return (Math.abs(geometry.sweep) * Math.PI * geometry.radius) / 180;
  if (geometry.kind === 'ellipse') return (Math.abs(geometry.sweep) * Math.PI * (geometry.radiusX + geometry.radiusY)) / 360;
  const [a, b] = [geometry.points[0]!, geometry.points[geometry.points.length - 1]!];
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** The point of a curve at a share of its length (of its parameter), 0 to 1. */
export function pointOn({ geometry }: ViewCurve, share: number): Vector2 {
  if (geometry.kind === 'line')
    return [geometry.from[0] + (geometry.to[0] - geometry.from[0]) * share, geometry.from[1] + (geometry.to[1] - geometry.from[1]) * share];
  if (geometry.kind === 'spline') return geometry.points[3 * Math.round(((geometry.points.length - 1) / 3) * share)]!;
  return pointAtAngle(geometry, geometry.start + geometry.sweep * share);
}
