import type { Manifold } from 'manifold-3d/manifold';
import type { Solid, SolidFace, Surface } from './model.js';
import { compact } from './mesh-body.js';
import { snapVertices } from './snap.js';

/** Faces and surfaces that a body's face numbers point to, with the bound of their chords' distance from them, mm. */
export interface FaceTable {
  readonly faces: readonly SolidFace[];
  readonly surfaces: readonly Surface[];
  readonly facetError: number;
}

/** Reads a body back as a solid: vertices welded and put on their exact surfaces, unused faces and surfaces left out. */
export function solidOfBody(body: Manifold, table: FaceTable): Solid {
  const mesh = body.getMesh();
  const welded = Uint32Array.from({ length: mesh.numVert }, (_, i) => i);
  mesh.mergeFromVert.forEach((from, i) => {
    welded[from] = mesh.mergeToVert[i] ?? from;
  });
  const places = new Float64Array(mesh.numVert * 3);
  for (let i = 0; i < mesh.numVert; i += 1) {
    for (let k = 0; k < 3; k += 1) places[3 * i + k] = mesh.vertProperties[i * mesh.numProp + k] ?? 0;
  }
  const { positions, triangles } = compact(places, mesh.triVerts.map((vertex) => welded[vertex] ?? vertex));
  const used = usedFaces(table, mesh.faceID);
  const limit = snapLimit(table);
  snapVertices(positions, triangles, used.faceOfTriangle, used.faces, used.surfaces, limit);
  return { positions, triangles, ...used, facetError: table.facetError };
}

/** A cut that runs along a curved face shallowly moves its edge much farther than the chord is from the arc. */
const snapLimit = (table: FaceTable): number => 1e-3 + 20 * table.facetError;

/** Renumbers faces and surfaces in the order of the table, without those that have no facet. */
function usedFaces(
  table: FaceTable,
  faceNumbers: Uint32Array,
): Pick<Solid, 'faces' | 'surfaces' | 'faceOfTriangle'> {
  const faceUsed = new Set(faceNumbers);
  const faces: SolidFace[] = [];
  const surfaces: Surface[] = [];
  const newFace = new Map<number, number>();
  const newSurface = new Map<number, number>();
  table.faces.forEach((face, number) => {
    if (!faceUsed.has(number)) return;
    let surface = newSurface.get(face.surface);
    if (surface === undefined) {
      surface = surfaces.length;
      newSurface.set(face.surface, surface);
      surfaces.push(table.surfaces[face.surface] as Surface);
    }
    newFace.set(number, faces.length);
    faces.push({ tag: face.tag, surface });
  });
  const faceOfTriangle = faceNumbers.map((number) => {
    const face = newFace.get(number);
    if (face === undefined) throw new Error('a facet came back without its face');
    return face;
  });
  return { faces, surfaces, faceOfTriangle };
}
