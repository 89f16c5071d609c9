import type { Solid } from '../solid/model.js';
import { mortonOrder } from './morton.js';

/** A tree of boxes over the facets of a solid, for rays in any direction. Nodes from 0 to `leaves` - 1 hold facets. */
export interface FacetTree {
  /** Per node: low x, y, z, high x, y, z. */
  readonly boxes: Float64Array;
  /** Per node the place of its first facet in `facets` (a leaf) or its first child node, and how many follow one another. */
  readonly links: Uint32Array;
  readonly counts: Uint8Array;
  readonly leaves: number;
  /** The last node. */
  readonly root: number;
  readonly facets: Uint32Array;
  /** Per facet: unit normal x, y, z; zero for a facet without area. */
  readonly normals: Float64Array;
}

const GROUP = 4;

/** Facets in the order of a space-filling curve, taken four by four into boxes and these again, up to one. */
export function facetTreeOf({ positions, triangles }: Solid): FacetTree {
  const count = triangles.length / 3;
  const facets = mortonOrder(positions, triangles);
  const sizes = [Math.ceil(count / GROUP)];
  while (sizes.at(-1)! > 1) sizes.push(Math.ceil(sizes.at(-1)! / GROUP));
  const total = sizes.reduce((sum, size) => sum + size, 0);
  const boxes = new Float64Array(6 * total);
  const links = new Uint32Array(total);
  const counts = new Uint8Array(total);
  const leaves = sizes[0]!;
  for (let node = 0; node < leaves; node += 1) {
    links[node] = GROUP * node;
    counts[node] = Math.min(GROUP, count - GROUP * node);
    boxFacets(positions, triangles, facets, links[node]!, counts[node]!, boxes, 6 * node);
  }
  let below = 0;
  for (let level = 1; level < sizes.length; level += 1) {
    const start = below + sizes[level - 1]!;
    for (let i = 0; i < sizes[level]!; i += 1) {
      const node = start + i;
      links[node] = below + GROUP * i;
      counts[node] = Math.min(GROUP, start - links[node]!);
      boxNodes(boxes, links[node]!, counts[node]!, 6 * node);
    }
    below = start;
  }
  return { boxes, links, counts, leaves, root: total - 1, facets, normals: normalsOf(positions, triangles) };
}

function boxFacets(p: Float64Array, triangles: Uint32Array, facets: Uint32Array, first: number, count: number, boxes: Float64Array, at: number): void {
  let [lx, ly, lz, hx, hy, hz] = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
  for (let i = first; i < first + count; i += 1) {
    const corner = 3 * facets[i]!;
    for (let k = corner; k < corner + 3; k += 1) {
      const v = 3 * triangles[k]!;
      const x = p[v]!;
      const y = p[v + 1]!;
      const z = p[v + 2]!;
      if (x < lx) lx = x;
      if (x > hx) hx = x;
      if (y < ly) ly = y;
      if (y > hy) hy = y;
      if (z < lz) lz = z;
      if (z > hz) hz = z;
    }
  }
  boxes[at] = lx;
  boxes[at + 1] = ly;
  boxes[at + 2] = lz;
  boxes[at + 3] = hx;
  boxes[at + 4] = hy;
  boxes[at + 5] = hz;
}

function boxNodes(boxes: Float64Array, first: number, count: number, at: number): void {
  for (let k = 0; k < 3; k += 1) {
    let [low, high] = [Infinity, -Infinity];
    for (let node = first; node < first + count; node += 1) {
      low = Math.min(low, boxes[6 * node + k]!);
      high = Math.max(high, boxes[6 * node + 3 + k]!);
    }
    boxes[at + k] = low;
    boxes[at + 3 + k] = high;
  }
}

function normalsOf(p: Float64Array, triangles: Uint32Array): Float64Array {
  const normals = new Float64Array(triangles.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t]!;
    const b = 3 * triangles[t + 1]!;
    const c = 3 * triangles[t + 2]!;
    const ux = p[b]! - p[a]!;
    const uy = p[b + 1]! - p[a + 1]!;
    const uz = p[b + 2]! - p[a + 2]!;
    const vx = p[c]! - p[a]!;
    const vy = p[c + 1]! - p[a + 1]!;
    const vz = p[c + 2]! - p[a + 2]!;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const size = Math.sqrt(nx * nx + ny * ny + nz * nz);
    if (size === 0) continue;
    normals[t] = nx / size;
    normals[t + 1] = ny / size;
    normals[t + 2] = nz / size;
  }
  return normals;
}
