import type { Vector3 } from '../geometry/vector.js';
import type { Solid } from '../solid/model.js';

/** A tree of boxes over the facets of a solid, for rays in any direction. */
export interface FacetTree {
  /** Per node: low x, y, z, high x, y, z. */
  readonly boxes: Float64Array;
  /** Per node: at a leaf the place of its first facet in `facets`; else the index of its second child (the first follows the node). */
  readonly links: Uint32Array;
  /** Per node: number of facets at a leaf, 0 at a fork. */
  readonly counts: Uint32Array;
  readonly facets: Uint32Array;
  /** Per facet: unit normal x, y, z; zero for a facet without area. */
  readonly normals: Float64Array;
}

const LEAF = 4;

export function facetTreeOf({ positions, triangles }: Solid): FacetTree {
  const count = triangles.length / 3;
  const bounds = new Float64Array(count * 6);
  const normals = new Float64Array(count * 3);
  for (let t = 0; t < count; t += 1) {
    const [a, b, c] = [3 * triangles[3 * t]!, 3 * triangles[3 * t + 1]!, 3 * triangles[3 * t + 2]!];
    for (let k = 0; k < 3; k += 1) {
      const [p, q, r] = [positions[a + k]!, positions[b + k]!, positions[c + k]!];
      bounds[6 * t + k] = Math.min(p, q, r);
      bounds[6 * t + 3 + k] = Math.max(p, q, r);
    }
    writeNormal(positions, a, b, c, normals, 3 * t);
  }
  const facets = Uint32Array.from({ length: count }, (_, i) => i);
  const most = 2 * count + 1;
  const tree = { boxes: new Float64Array(most * 6), links: new Uint32Array(most), counts: new Uint32Array(most), facets, normals };
  let used = 0;
  const build = (from: number, to: number): void => {
    const node = used++;
    const box = tree.boxes.subarray(6 * node, 6 * node + 6);
    const middles: [number, number, number, number, number, number] = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
    box.set(middles);
    for (let i = from; i < to; i += 1) {
      const at = 6 * facets[i]!;
      for (let k = 0; k < 3; k += 1) {
        const [low, high] = [bounds[at + k]!, bounds[at + 3 + k]!];
        if (low < box[k]!) box[k] = low;
        if (high > box[3 + k]!) box[3 + k] = high;
        const middle = low + high;
        if (middle < middles[k]!) middles[k] = middle;
        if (middle > middles[3 + k]!) middles[3 + k] = middle;
      }
    }
    if (to - from <= LEAF) {
      tree.links[node] = from;
      tree.counts[node] = to - from;
      return;
    }
    const spread = [middles[3] - middles[0], middles[4] - middles[1], middles[5] - middles[2]] as const;
    const k = spread[0] >= spread[1] && spread[0] >= spread[2] ? 0 : spread[1] >= spread[2] ? 1 : 2;
    const cut = (middles[k]! + middles[3 + k]!) / 2;
    let split = from;
    for (let i = from; i < to; i += 1) {
      const facet = facets[i]!;
      if (bounds[6 * facet + k]! + bounds[6 * facet + 3 + k]! >= cut) continue;
      facets[i] = facets[split]!;
      facets[split++] = facet;
    }
    if (split === from || split === to) split = (from + to) >> 1;
    build(from, split);
    tree.links[node] = used;
    build(split, to);
  };
  build(0, count);
  return tree;
}

function writeNormal(p: Float64Array, a: number, b: number, c: number, normals: Float64Array, at: number): void {
  const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!];
  const [vx, vy, vz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!];
  const normal: Vector3 = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const size = Math.sqrt(normal[0] ** 2 + normal[1] ** 2 + normal[2] ** 2);
  if (size > 0) for (let k = 0; k < 3; k += 1) normals[at + k] = normal[k]! / size;
}
