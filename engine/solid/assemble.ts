import type { Manifold } from 'manifold-3d/manifold';
import type { Solid, SolidFace, Surface } from './model.js';
import { collapseShortEdges } from './collapse.js';
import { compact } from './mesh-body.js';
import { snapVertices, surfacesAtVertices } from './snap.js';
import type { SurfaceTable } from './surface-table.js';

/** Nearer vertices that share an edge are one, mm: twice the noise of 32-bit places on a body of 100 mm. */
const ONE_POINT = 1e-5;

/**
 * Reads a body back as a solid: vertices put on their exact surfaces, vertices in one place joined, unused faces and
 * surfaces left out. Face numbers of the body point into the table.
 */
export function solidOfBody(body: Manifold, table: SurfaceTable): Solid {
  const mesh = body.getMesh();
  const welded = Uint32Array.from({ length: mesh.numVert }, (_, i) => i);
  mesh.mergeFromVert.forEach((from, i) => {
    welded[from] = mesh.mergeToVert[i] ?? from;
  });
  const places = new Float64Array(mesh.numVert * 3);
  for (let i = 0; i < mesh.numVert; i += 1) {
    for (let k = 0; k < 3; k += 1) places[3 * i + k] = mesh.vertProperties[i * mesh.numProp + k] ?? 0;
  }
  const first = compact(places, mesh.triVerts.map((vertex) => welded[vertex] ?? vertex));
  const faceError = [...new Set(mesh.faceID)].reduce((most, face) => Math.max(most, table.sags[face] ?? 0), 0);
  const snap = (triangles: Uint32Array, faceNumbers: Uint32Array, only?: ReadonlySet<number>): void => {
    const met = surfacesAtVertices(first.positions.length / 3, triangles, faceNumbers, table.faces);
    snapVertices(first.positions, met, table.surfaces, snapLimit(faceError), only);
  };
  snap(first.triangles, mesh.faceID);
  const { triangles: left, kept, joined } = collapseShortEdges(first.positions, first.triangles, ONE_POINT);
  const faceNumbers = Uint32Array.from(kept, (triangle) => mesh.faceID[triangle] ?? 0);
  if (joined.size > 0) snap(left, faceNumbers, joined);
  const { positions, triangles } = compact(first.positions, left);
  return { positions, triangles, ...usedFaces(table, faceNumbers), facetError: faceError };
}

/** A cut that runs along a curved face shallowly moves its edge much farther than the chord is from the arc. */
const snapLimit = (facetError: number): number => 1e-3 + 20 * facetError;

/** Renumbers faces and surfaces in the order of the table, without those that have no facet. */
function usedFaces(
  table: SurfaceTable,
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
