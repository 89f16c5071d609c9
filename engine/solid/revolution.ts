import { onFrame, type Frame } from '../geometry/frame.js';
import type { Outline, Segment } from '../geometry/outline.js';
import { length2, scale, subtract2, type Vector3 } from '../geometry/vector.js';
import type { Revolution } from '../part/form.js';
import { arcRadius, gridDirection, stepsPerTurn } from './grid.js';
import type { Surface } from './model.js';
import { pieceOf } from './prism.js';
import { outlineRing } from './ring.js';
import type { Sweeper } from './sweep.js';
import type { FormFace, SweptMesh } from './swept-mesh.js';

/** Nearer to the axis than this is on the axis, mm. */
const ON_AXIS = 1e-9;

/**
 * The mesh of a turned outline about the z axis, its angles counted from the x axis. Faces are numbered by the segments.
 * Throws RangeError when the outline crosses the axis.
 */
export function revolutionSweep(sweep: Sweeper, outline: Outline, segments: number): SweptMesh {
  const ring = outlineRing(outline, [1, 0], segments);
  const count = ring.points.length;
  const widest = Math.max(...ring.points.map((point) => point[0]));
  if (ring.points.some((point) => point[0] < -1e-6)) {
    throw new RangeError(`the outline with "${outline[0]?.face ?? ''}" crosses the axis that it is turned about`);
  }
  const steps = stepsPerTurn(widest, segments);
  const sections = Array.from({ length: steps }, (_, step) => {
    const [c, s] = gridDirection(step, steps);
    return ring.points.map(([r, z]): Vector3 => (r < ON_AXIS ? [0, 0, z] : [r * c, r * s, z]));
  });
  const swept = sweep(sections, true);
  const triangles: number[] = [];
  const faceOfTriangle: number[] = [];
  for (let i = 0; i < swept.length; i += 3) {
    // The walls run from section to section with the outline's inside to the right: turn each facet over.
    const corners = [swept[i] ?? 0, swept[i + 2] ?? 0, swept[i + 1] ?? 0];
    const welded = corners.map((corner) => {
      const point = corner % count;
      return (ring.points[point]?.[0] ?? 0) < ON_AXIS ? point : corner;
    });
    if (new Set(welded).size < 3) continue;
    triangles.push(...welded);
    faceOfTriangle.push(ring.owners[pieceOf(corners, count)] ?? 0);
  }
  const radii = outline.map(() => 0);
  ring.owners.forEach((owner, i) => {
    const ends = [ring.points[i], ring.points[(i + 1) % count]].map((point) => point?.[0] ?? 0);
    radii[owner] = Math.max(radii[owner] ?? 0, ...ends);
  });
  const around = (segment: number): number => (radii[segment] ?? 0) * (1 - Math.cos(Math.PI / steps));
  return {
    points: sections.flat(),
    triangles: Uint32Array.from(triangles),
    faceOfTriangle: Uint32Array.from(faceOfTriangle),
    sags: outline.map((segment, i) => (isFlat(segment) ? 0 : (ring.sags[i] ?? 0) + around(i))),
  };
}

const isFlat = (segment: Segment): boolean =>
  segment.kind === 'line' && Math.abs(segment.to[1] - segment.from[1]) <= ON_AXIS * length2(subtract2(segment.to, segment.from));

/** Names and exact surfaces of a turned form's faces, numbered as in its mesh; a piece along the axis makes none. */
export function revolutionFaces(form: Revolution): Omit<FormFace, 'sag'>[] {
  return form.outline.map((segment) => ({ face: segment.face, surface: turnedSurface(form.frame, segment) }));
}

function turnedSurface(frame: Frame, segment: Segment): Surface {
  const axis = frame.z;
  const at = (height: number): Vector3 => onFrame(frame, [0, 0], height);
  if (segment.kind === 'arc') {
    const [major, height] = segment.centre;
    const minor = arcRadius(segment);
    if (Math.abs(major) <= ON_AXIS) return { kind: 'sphere', centre: at(height), radius: minor };
    return { kind: 'torus', centre: at(height), axis, major, minor };
  }
  const [radius, height] = segment.from;
  const [out, up] = subtract2(segment.to, segment.from);
  if (isFlat(segment)) return { kind: 'plane', point: at(height), normal: scale(axis, out > 0 ? -1 : 1) };
  if (Math.abs(out) <= ON_AXIS * Math.abs(up)) return { kind: 'cylinder', origin: at(height), axis, radius };
  const slope = out / up;
  return {
    kind: 'cone',
    apex: at(height - radius / slope),
    axis: scale(axis, Math.sign(slope)),
    halfAngle: (Math.atan(Math.abs(slope)) * 180) / Math.PI,
  };
}
