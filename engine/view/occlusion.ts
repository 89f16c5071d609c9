import type { Vector3 } from '../geometry/vector.js';
import type { Prepared } from './prepared.js';
import type { Turn } from './shadow.js';

/** What a point of the solid belongs to. */
export interface Owner {
  /** Facets that hold all of these vertices do not count; none means that all facets count. */
  readonly vertices: readonly number[];
  /** Facets of these surfaces count only where the point lies deeper behind them than facets stray from their surface. */
  readonly surfaces: readonly number[];
}

export const NOBODY: Owner = { vertices: [], surfaces: [] };

/** Tells whether a point of space is hidden from the eye by a facet that stands before it by more than the tolerance, mm. */
export type Occlusion = (p: Vector3, owner: Owner, tolerance: number) => boolean;

/** A facet hides what lies behind it and up to this far beside it, mm: the sides of neighbours leave no gap between them. */
const BESIDE = 2e-5;

/** Facets that stand nearer to edge-on than this hide nothing; others stand before them. */
const EDGE_ON = 1e-5;

/**
 * One ray to the eye through the tree of facets, ended by the first that hides the point by more than the tolerance.
 * Only facets that face the eye count: a ray that enters the material leaves it through one.
 */
export function occlusionOf({ solid, tree }: Prepared, toEye: Vector3, turn: Turn): Occlusion {
  const { triangles, positions, faceOfTriangle, faces } = solid;
  const stray = 2 * solid.facetError;
  const { boxes, links, counts, leaves, root, facets, normals } = tree;
  const [[rx, ry, rz], [ux, uy, uz]] = axes(turn);
  const [wx, wy, wz] = toEye;
  const stack = new Uint32Array(128);
  let last = -1;

  const hides = (facet: number, p: Vector3, px: number, py: number, { vertices, surfaces }: Owner, tolerance: number): boolean => {
    const facing = normals[3 * facet]! * wx + normals[3 * facet + 1]! * wy + normals[3 * facet + 2]! * wz;
    if (facing < EDGE_ON) return false;
    const i = triangles[3 * facet]!;
    const j = triangles[3 * facet + 1]!;
    const k = triangles[3 * facet + 2]!;
    if (vertices.length > 0 && vertices.every((v) => v === i || v === j || v === k)) return false;
    const a = 3 * i;
    const b = 3 * j;
    const c = 3 * k;
    const ax = positions[a]!;
    const ay = positions[a + 1]!;
    const az = positions[a + 2]!;
    const bx = positions[b]!;
    const by = positions[b + 1]!;
    const bz = positions[b + 2]!;
    const cx = positions[c]!;
    const cy = positions[c + 1]!;
    const cz = positions[c + 2]!;
    const x0 = ax * rx + ay * ry + az * rz - px;
    const y0 = ax * ux + ay * uy + az * uz - py;
    const x1 = bx * rx + by * ry + bz * rz - px;
    const y1 = bx * ux + by * uy + bz * uz - py;
    const x2 = cx * rx + cy * ry + cz * rz - px;
    const y2 = cx * ux + cy * uy + cz * uz - py;
    if (outside(x0, y0, x1, y1) || outside(x1, y1, x2, y2) || outside(x2, y2, x0, y0)) return false;
    const qx = p[0] - ax;
    const qy = p[1] - ay;
    const qz = p[2] - az;
    const rise = -(qx * normals[3 * facet]! + qy * normals[3 * facet + 1]! + qz * normals[3 * facet + 2]!) / facing;
    if (rise <= tolerance) return false;
    if (rise * facing < stray && surfaces.includes(faces[faceOfTriangle[facet]!]!.surface)) return false;
    // Beside a steep facet its plane runs away; its own corners bound how far before the point it can stand.
    const ha = -(qx * wx + qy * wy + qz * wz);
    const hb = (bx - p[0]) * wx + (by - p[1]) * wy + (bz - p[2]) * wz;
    const hc = (cx - p[0]) * wx + (cy - p[1]) * wy + (cz - p[2]) * wz;
    return Math.max(ha, hb, hc) > tolerance;
  };

  return (p, owner, tolerance) => {
    const px = p[0] * rx + p[1] * ry + p[2] * rz;
    const py = p[0] * ux + p[1] * uy + p[2] * uz;
    if (last >= 0 && hides(last, p, px, py, owner, tolerance)) return true;
    let top = 0;
    stack[top++] = root;
    while (top > 0) {
      const node = stack[--top]!;
      if (!reaches(boxes, 6 * node, p, wx, wy, wz, tolerance)) continue;
      const count = counts[node]!;
      if (node >= leaves) {
        for (let i = 0; i < count; i += 1) stack[top++] = links[node]! + i;
        continue;
      }
      for (let i = links[node]!; i < links[node]! + count; i += 1) {
        const facet = facets[i]!;
        if (!hides(facet, p, px, py, owner, tolerance)) continue;
        last = facet;
        return true;
      }
    }
    return false;
  };
}

/** True when the origin lies more than `BESIDE` to the right of the way from (x0, y0) to (x1, y1). */
function outside(x0: number, y0: number, x1: number, y1: number): boolean {
  const area = x0 * y1 - x1 * y0;
  return area < 0 && area * area > BESIDE * BESIDE * ((x1 - x0) ** 2 + (y1 - y0) ** 2);
}

/** True when the ray from p along w meets the box at some distance beyond the tolerance. */
function reaches(boxes: Float64Array, at: number, p: Vector3, wx: number, wy: number, wz: number, tolerance: number): boolean {
  let low = tolerance - BESIDE;
  let high = Infinity;
  for (let k = 0; k < 3; k += 1) {
    const w = k === 0 ? wx : k === 1 ? wy : wz;
    const from = boxes[at + k]! - BESIDE - p[k]!;
    const to = boxes[at + 3 + k]! + BESIDE - p[k]!;
    if (w > -1e-12 && w < 1e-12) {
      if (from > 0 || to < 0) return false;
      continue;
    }
    const [near, far] = w > 0 ? [from / w, to / w] : [to / w, from / w];
    if (near > low) low = near;
    if (far < high) high = far;
    if (low > high) return false;
  }
  return true;
}

/** The directions of space that run right and up in the view. */
function axes(turn: Turn): [Vector3, Vector3] {
  const x = turn([1, 0, 0]);
  const y = turn([0, 1, 0]);
  const z = turn([0, 0, 1]);
  return [[x[0], y[0], z[0]], [x[1], y[1], z[1]]];
}
