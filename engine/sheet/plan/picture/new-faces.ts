import type { Operation, Part } from '../../../part/part.js';
import type { Solid } from '../../../solid/model.js';
import { cutsShowing, threadedSurfaces } from '../../operations/balloons.js';

/** Faces of the work that an operation makes, or cuts its thread in: indices of the solid's faces, and of their surfaces. */
export interface NewFaces {
  readonly faces: ReadonlySet<number>;
  readonly surfaces: ReadonlySet<number>;
}

export function newFaces(part: Part, operation: Operation, after: Solid): NewFaces {
  const cuts = cutsShowing(part, operation);
  const threaded = new Set(threadedSurfaces(operation, after));
  const faces = after.faces.flatMap(({ tag, surface }, i) => (cuts.has(tag.cut) || threaded.has(surface) ? [i] : []));
  return { faces: new Set(faces), surfaces: new Set(faces.map((i) => after.faces[i]!.surface)) };
}
