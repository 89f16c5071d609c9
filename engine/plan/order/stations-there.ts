import type { Part } from '../../part/part.js';
import type { FaceTag, Solid } from '../../solid/model.js';

/** The stations on which a face lies, by the cut (or the stock) that made it. */
export function stationsOfFace(part: Part, { cut, face }: FaceTag): readonly string[] {
  if (cut === 'stock') return part.stock.faces[face]?.stations ?? [];
  return part.operations.flatMap(({ cuts }) => cuts).find(({ id }) => id === cut)?.faces[face]?.stations ?? [];
}

const kept = new WeakMap<Solid, WeakMap<Part, ReadonlySet<string>>>();

/** The stations on which the work has a face. */
export function stationsThere(part: Part, solid: Solid): ReadonlySet<string> {
  const known = kept.get(solid) ?? new WeakMap<Part, ReadonlySet<string>>();
  kept.set(solid, known);
  const found = known.get(part) ?? new Set([...new Set(solid.faceOfTriangle)].flatMap((face) => stationsOfFace(part, solid.faces[face]!.tag)));
  known.set(part, found);
  return found;
}
