import type { Solid } from '../solid/model.js';
import { nextOf, type Topology } from './topology.js';

/** Mesh edges end to end between the same two sheets; seen from outside, `left` lies to the left of the way along `vertices`. */
export interface Chain {
  readonly left: number;
  readonly right: number;
  /** Vertex indices; a closed chain ends with the vertex that it begins with. */
  readonly vertices: readonly number[];
}

/** The lines along which facets of different sheets meet, in an order that depends on the mesh alone. */
export function chainsOf({ triangles, positions }: Solid, { twin, sheetOfTriangle, sheetCount }: Topology): Chain[] {
  const groups = new Map<number, number[]>();
  for (let h = 0; h < triangles.length; h += 1) {
    const left = sheetOfTriangle[Math.trunc(h / 3)]!;
    const right = sheetOfTriangle[Math.trunc(twin[h]! / 3)]!;
    if (left >= right) continue;
    const key = left * sheetCount + right;
    const group = groups.get(key);
    if (group) group.push(h);
    else groups.set(key, [h]);
  }
  const leaving = new Int32Array(positions.length / 3).fill(-1);
  const arriving = new Int32Array(positions.length / 3).fill(-1);
  const chains: Chain[] = [];
  for (const key of [...groups.keys()].sort((a, b) => a - b)) {
    const left = Math.floor(key / sheetCount);
    for (const vertices of linked(groups.get(key)!, triangles, leaving, arriving)) {
      chains.push({ left, right: key - left * sheetCount, vertices });
    }
  }
  return chains;
}

const FORK = -2;

/** Links half-edges to chains; a vertex where more than two of them meet ends every chain. Leaves both arrays as it found them. */
function linked(halfEdges: readonly number[], triangles: Uint32Array, leaving: Int32Array, arriving: Int32Array): number[][] {
  for (const h of halfEdges) {
    const [from, to] = [triangles[h]!, triangles[nextOf(h)]!];
    leaving[from] = leaving[from] === -1 ? h : FORK;
    arriving[to] = arriving[to] === -1 ? h : FORK;
  }
  const used = new Set<number>();
  const walk = (start: number): number[] => {
    const vertices = [triangles[start]!];
    for (let h = start; h >= 0 && !used.has(h); ) {
      used.add(h);
      const to = triangles[nextOf(h)]!;
      vertices.push(to);
      h = arriving[to] === FORK ? -1 : leaving[to]!;
    }
    return vertices;
  };
  const chains: number[][] = [];
  for (const h of halfEdges) {
    const from = triangles[h]!;
    if (arriving[from]! < 0 || leaving[from] === FORK) chains.push(walk(h));
  }
  for (const h of halfEdges) if (!used.has(h)) chains.push(walk(h));
  for (const h of halfEdges) {
    leaving[triangles[h]!] = -1;
    arriving[triangles[nextOf(h)]!] = -1;
  }
  return chains;
}
