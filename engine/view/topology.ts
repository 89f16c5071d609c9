import type { Solid } from '../solid/model.js';
import { offsetFrom } from '../solid/surface.js';

/**
 * How the facets of a solid hang together. A half-edge h is the side of triangle floor(h / 3) that starts at that
 * triangle's corner h mod 3. A sheet is a surface with the side on which its material lies: 2 * surface index, plus 1
 * where the outward normal is the surface's own normal reversed (a bore).
 */
export interface Topology {
  /** For each half-edge the one that runs back along it. */
  readonly twin: Int32Array;
  readonly sheetOfTriangle: Uint32Array;
  readonly sheetCount: number;
}

/** Throws RangeError when the mesh is not closed. */
export function topologyOf(solid: Solid): Topology {
  return { twin: twinsOf(solid), sheetOfTriangle: sheetsOf(solid), sheetCount: solid.surfaces.length * 2 };
}

export const nextOf = (halfEdge: number): number => (halfEdge % 3 === 2 ? halfEdge - 2 : halfEdge + 1);

function twinsOf({ triangles, positions }: Solid): Int32Array {
  const vertexCount = positions.length / 3;
  const first = new Uint32Array(vertexCount + 1);
  for (const vertex of triangles) first[vertex + 1]! += 1;
  for (let i = 0; i < vertexCount; i += 1) first[i + 1]! += first[i]!;
  const fill = first.slice(0, vertexCount);
  const leaving = new Uint32Array(triangles.length);
  for (let h = 0; h < triangles.length; h += 1) leaving[fill[triangles[h]!]!++] = h;
  const twin = new Int32Array(triangles.length).fill(-1);
  for (let h = 0; h < triangles.length; h += 1) {
    if (twin[h]! >= 0) continue;
    const from = triangles[h]!;
    const to = triangles[nextOf(h)]!;
    for (let k = first[to]!; k < first[to + 1]!; k += 1) {
      const other = leaving[k]!;
      if (twin[other]! < 0 && triangles[nextOf(other)] === from) {
        twin[h] = other;
        twin[other] = h;
        break;
      }
    }
    if (twin[h]! < 0) throw new RangeError(`the mesh is not closed: the side from vertex ${from} to ${to} has no partner`);
  }
  return twin;
}

/** Decides for each face, by its largest of a few facets, whether material lies on the inner side of its surface. */
function sheetsOf(solid: Solid): Uint32Array {
  const { triangles, faceOfTriangle, faces, surfaces, positions: p } = solid;
  const sheets = new Uint32Array(faceOfTriangle.length);
  const largest = new Float64Array(faces.length);
  const flips = new Uint8Array(faces.length);
  for (let t = 0; t < faceOfTriangle.length; t += 1) {
    const face = faceOfTriangle[t]!;
    const a = 3 * triangles[3 * t]!;
    const b = 3 * triangles[3 * t + 1]!;
    const c = 3 * triangles[3 * t + 2]!;
    const ux = p[b]! - p[a]!;
    const uy = p[b + 1]! - p[a + 1]!;
    const uz = p[b + 2]! - p[a + 2]!;
    const vx = p[c]! - p[a]!;
    const vy = p[c + 1]! - p[a + 1]!;
    const vz = p[c + 2]! - p[a + 2]!;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const size = nx * nx + ny * ny + nz * nz;
    if (size <= largest[face]! * 1.5) continue;
    largest[face] = size;
    const middle = [0, 1, 2].map((k) => (p[a + k]! + p[b + k]! + p[c + k]!) / 3) as [number, number, number];
    const { normal } = offsetFrom(surfaces[faces[face]!.surface]!, middle);
    flips[face] = normal[0] * nx + normal[1] * ny + normal[2] * nz < 0 ? 1 : 0;
  }
  for (let t = 0; t < sheets.length; t += 1) sheets[t] = 2 * faces[faceOfTriangle[t]!]!.surface + flips[faceOfTriangle[t]!]!;
  return sheets;
}
