import { add, cross, dot, length, scale, subtract, unit, type Vector3 } from '../../../geometry/vector.js';
import type { ExternalThreadSize } from '../../../part/cut.js';
import type { Operation, Part } from '../../../part/part.js';
import type { AddedCurve, Camera, Curve3 } from '../../../view/model.js';
import { leadIn, mouthChamfer, mouthDepth, off, openingStart, openingSweep, shifted } from '../../views/thread-lines.js';

/** Seen flatter than this, as a cosine, an end of a thread is but a line. */
const leastSight = 0.1;

/**
 * The lines by which the picture of an operation shows the thread that it cuts, in the manner of ISO 6410-1: three quarters
 * of the root's circle on the end of a screw and of the crest's circle in the mouth of a nut, thin; along a screw its root,
 * and a line where the full thread ends.
 */
export const threadCurves = (part: Part, operation: Operation, camera: Camera): readonly AddedCurve[] =>
  operation.cuts.flatMap(({ sizes }) =>
    sizes.flatMap((size): readonly AddedCurve[] => {
      const name = threadName(operation);
      if (size.kind === 'tapping') return size.points.flatMap((point) => mouth(name, add(point, scale(size.direction, mouthDepth(part, size, point))), size.direction, size.thread.major / 2, camera));
      if (size.kind === 'external-thread') return screw(part, size, name, camera);
      if (size.kind !== 'internal-thread') return [];
      const along = unit(subtract(size.to, size.from));
      return mouth(name, add(size.from, scale(along, mouthChamfer(part, size, size.thread.major / 2))), along, size.thread.major / 2, camera);
    }),
  );

/** What the lines of an operation's threads are called. */
export const threadName = ({ number }: Operation): string => `thread of operation ${number}`;

/** The open circle on an end that is seen; `inward` points into the metal. */
function mouth(name: string, centre: Vector3, inward: Vector3, radius: number, camera: Camera): readonly AddedCurve[] {
  if (dot(inward, camera.toward) < leastSight) return [];
  const level = cross(inward, camera.up);
  const x = length(level) < 1e-6 ? unit(cross(inward, camera.toward)) : unit(level);
  const drawn: Curve3 = { kind: 'arc', centre, x, y: cross(x, inward), radius, start: openingStart, sweep: openingSweep };
  return [{ role: 'thread', name, drawn, tested: shifted(drawn, scale(camera.toward, -off)) }];
}

function screw(part: Part, size: ExternalThreadSize, name: string, camera: Camera): readonly AddedCurve[] {
  const [root, crest] = [size.root / 2, size.thread.major / 2];
  const along = unit(subtract(size.to, size.from));
  const end = mouth(name, size.from, along, root, camera);
  const sight = dot(along, camera.toward);
  if (Math.abs(sight) > 1 - 1e-3) return end;
  const across = unit(cross(along, camera.toward));
  // Square to the axis, as near to the eye as may be.
  const nearest = unit(subtract(scale(along, sight), camera.toward));
  const start = add(size.from, scale(along, leadIn(part, size, crest - root)));
  const before = scale(nearest, crest + off);
  const sides = [-1, 1].map((side): AddedCurve => {
    const drawn: Curve3 = { kind: 'line', from: add(start, scale(across, side * root)), to: add(size.to, scale(across, side * root)) };
    return { role: 'thread', name, drawn, tested: { kind: 'line', from: add(start, before), to: add(size.to, before) } };
  });
  const round: Curve3 = { kind: 'arc', centre: size.to, x: across, y: nearest, radius: crest, start: 0, sweep: 180 };
  return [...end, ...sides, { role: 'edge', name, drawn: round, tested: { ...round, radius: crest + off } }];
}
