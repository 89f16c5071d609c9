import { fromFrame } from '../geometry/frame.js';
import { add, scale, subtract, unit, type Vector3 } from '../geometry/vector.js';
import { indexOf } from '../part/author/directions.js';
import type { Cut } from '../part/cut.js';
import type { Form, Prism } from '../part/form.js';
import type { Part } from '../part/part.js';
import type { Station } from '../part/station.js';

/** A flat face that a milled cut leaves. `normal` (length one) points to the side where metal goes and the cutter stands. */
export interface CutPlane {
  readonly point: Vector3;
  readonly normal: Vector3;
  /** The station that sets it; a bevel has none. */
  readonly station?: Station;
  readonly form: Form;
}

/** The flat faces of a cut that stay as faces of the part: what is open runs out of the metal and is no face. */
export function closedPlanes(part: Part, cut: Cut): readonly CutPlane[] {
  const stationsOf = (face: string): readonly Station[] => (cut.faces[face]?.stations ?? []).flatMap((id) => part.stations.find((station) => station.id === id) ?? []);
  return cut.forms.flatMap((form): readonly CutPlane[] => {
    if (form.kind === 'revolution') return [];
    const sides = form.kind === 'half-space' ? [{ point: form.point, normal: form.normal, face: form.face }] : prismSides(form);
    return sides.flatMap(({ point, normal, face }): readonly CutPlane[] => {
      // A face's name may stand for several strips of one cut: only the one at its station is closed.
      const station = stationsOf(face).find(({ axis, value }) => Math.abs(point[indexOf(axis)] - value) < 1e-6 && Math.abs(Math.abs(normal[indexOf(axis)]) - 1) < 1e-9);
      if (station !== undefined) return [{ point, normal, station, form }];
      return (cut.faces[face]?.bounds ?? []).length > 0 ? [{ point, normal, form }] : [];
    });
  });
}

interface Side {
  readonly point: Vector3;
  readonly normal: Vector3;
  readonly face: string;
}

function prismSides(form: Prism): readonly Side[] {
  const { frame, outline, low, high } = form;
  let area = 0;
  for (const { from, to } of outline) area += from[0] * to[1] - from[1] * to[0];
  const turn = area >= 0 ? 1 : -1;
  const middle = (low + high) / 2;
  const walls = outline.flatMap((segment): readonly Side[] => {
    if (segment.kind !== 'line') return [];
    const [from, to] = [fromFrame(frame, [...segment.from, middle]), fromFrame(frame, [...segment.to, middle])];
    const [dx, dy] = [segment.to[0] - segment.from[0], segment.to[1] - segment.from[1]];
    // What is cut away lies to the left of an outline that runs counter-clockwise.
    const inward = subtract(fromFrame(frame, [-dy * turn, dx * turn, 0]), frame.origin);
    return [{ point: scale(add(from, to), 0.5), normal: unit(inward), face: segment.face }];
  });
  const [u, v] = outline[0]!.from;
  return [
    ...walls,
    { point: fromFrame(frame, [u, v, low]), normal: frame.z, face: form.lowFace },
    { point: fromFrame(frame, [u, v, high]), normal: scale(frame.z, -1), face: form.highFace },
  ];
}
