import type { Vector3 } from '../geometry/vector.js';
import type { Solid } from '../solid/model.js';
import { offsetFrom } from '../solid/surface.js';
import { isTip } from './meeting.js';
import type { Topology } from './topology.js';

/** The facets of one curved sheet with the exact outward normals at their corners. */
export interface CurvedSheet {
  readonly sheet: number;
  readonly triangles: Uint32Array;
  /** For each facet three indices into `vertices` and `normals`. */
  readonly corners: Uint32Array;
  /** Vertex index of the mesh. */
  readonly vertices: Uint32Array;
  /** x, y, z; all zero at the tip of a cone, which has no normal. */
  readonly normals: Float64Array;
}

export function curvedSheetsOf(solid: Solid, { sheetOfTriangle, sheetCount }: Topology): CurvedSheet[] {
  const counts = new Uint32Array(sheetCount);
  for (const sheet of sheetOfTriangle) counts[sheet]! += 1;
  const members: (Uint32Array | undefined)[] = [];
  for (let sheet = 0; sheet < sheetCount; sheet += 1) {
    const curved = counts[sheet]! > 0 && solid.surfaces[sheet >> 1]!.kind !== 'plane';
    members.push(curved ? new Uint32Array(counts[sheet]!) : undefined);
  }
  const fill = new Uint32Array(sheetCount);
  for (let t = 0; t < sheetOfTriangle.length; t += 1) {
    const sheet = sheetOfTriangle[t]!;
    const list = members[sheet];
    if (list) list[fill[sheet]!++] = t;
  }
  const local = new Int32Array(solid.positions.length / 3).fill(-1);
  return members.flatMap((triangles, sheet) => (triangles ? [curvedSheet(solid, sheet, triangles, local)] : []));
}

/** Leaves `local` as it found it, all -1. */
function curvedSheet(solid: Solid, sheet: number, triangles: Uint32Array, local: Int32Array): CurvedSheet {
  const corners = new Uint32Array(triangles.length * 3);
  const list: number[] = [];
  for (let i = 0; i < corners.length; i += 1) {
    const vertex = solid.triangles[3 * triangles[Math.trunc(i / 3)]! + (i % 3)]!;
    if (local[vertex]! < 0) {
      local[vertex] = list.length;
      list.push(vertex);
    }
    corners[i] = local[vertex]!;
  }
  const normals = new Float64Array(list.length * 3);
  const surface = solid.surfaces[sheet >> 1]!;
  const side = sheet & 1 ? -1 : 1;
  list.forEach((vertex, i) => {
    local[vertex] = -1;
    const p: Vector3 = [solid.positions[3 * vertex]!, solid.positions[3 * vertex + 1]!, solid.positions[3 * vertex + 2]!];
    if (isTip(surface, p)) return;
    const { normal } = offsetFrom(surface, p);
    for (let k = 0; k < 3; k += 1) normals[3 * i + k] = side * normal[k]!;
  });
  return { sheet, triangles, corners, vertices: Uint32Array.from(list), normals };
}
