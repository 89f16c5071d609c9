import { add, type Vector3 } from '../geometry/vector.js';
import type { Cut, Ring, Size } from './cut.js';
import type { Form } from './form.js';

/** A form moved by a vector. */
export const movedForm = (form: Form, by: Vector3): Form =>
  form.kind === 'half-space' ? { ...form, point: add(form.point, by) } : { ...form, frame: { ...form.frame, origin: add(form.frame.origin, by) } };

/** A cut moved by a vector, under another id, with its stations by other names. */
export function movedCut(cut: Cut, by: Vector3, id: string, station: (id: string) => string): Cut {
  const { finishDepth } = cut;
  return {
    ...cut,
    id,
    forms: cut.forms.map((form) => movedForm(form, by)),
    faces: Object.fromEntries(Object.entries(cut.faces).map(([name, face]) => [name, { ...face, stations: face.stations.map(station), ...(face.bounds === undefined ? {} : { bounds: face.bounds.map(station) }) }])),
    sizes: cut.sizes.map((size) => ({ ...movedSize(size, by), cut: id })),
    stations: cut.stations.map(station),
    ...(finishDepth === undefined ? {} : { finishDepth: { ...finishDepth, walls: finishDepth.walls.map(station) } }),
  };
}

function movedSize(size: Size, by: Vector3): Size {
  const at = (point: Vector3): Vector3 => add(point, by);
  const ring = <R extends Ring>(given: R): R => ({ ...given, point: at(given.point) });
  switch (size.kind) {
    case 'hole':
    case 'tapping':
    case 'countersink':
    case 'counterbore':
      return { ...size, points: size.points.map(at), ...(size.pitchCircle === undefined ? {} : { pitchCircle: { ...size.pitchCircle, centre: at(size.pitchCircle.centre) } }) };
    case 'diameter':
    case 'external-thread':
    case 'internal-thread':
      return { ...size, from: at(size.from), to: at(size.to) };
    case 'radius':
      return { ...size, centres: size.centres.map(at), ...(size.ring === undefined ? {} : { ring: ring(size.ring) }) };
    case 'arc-slot':
    case 'arc-sides':
      return { ...size, centre: at(size.centre), ends: [at(size.ends[0]), at(size.ends[1])] };
    case 'angle':
      return { ...size, corner: at(size.corner) };
    case 'chamfer':
      return { ...size, ring: ring(size.ring) };
    case 'centre-hole':
      return { ...size, point: at(size.point) };
  }
}
