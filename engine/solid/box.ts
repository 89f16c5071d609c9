import { add, cross, dot, scale, subtract, unit, type Vector3 } from '../geometry/vector.js';
import type { Solid, Surface } from './model.js';
import { commonPoint } from './snap.js';

/** Lower and upper corner, mm. */
export interface Box {
  readonly low: Vector3;
  readonly high: Vector3;
}

/**
 * The box of a solid's exact surfaces. Where an edge bulges beyond its chords or a ball or ring beyond its facets, the
 * exact place is taken; so the box is that of the body, not of the mesh.
 */
export function boxOf(solid: Solid): Box {
  const along = (axis: 0 | 1 | 2, sense: 1 | -1): number => {
    const direction: Vector3 = [axis === 0 ? sense : 0, axis === 1 ? sense : 0, axis === 2 ? sense : 0];
    // Adding zero makes a plain zero of minus zero.
    return sense * extentAlong(solid, direction) + 0;
  };
  return {
    low: [along(0, -1), along(1, -1), along(2, -1)],
    high: [along(0, 1), along(1, 1), along(2, 1)],
  };
}

/** How far a solid reaches along a direction of length one, counted from the origin of space, mm. */
export function extentAlong(solid: Solid, direction: Vector3): number {
  const heights = new Float64Array(solid.positions.length / 3);
  let most = -Infinity;
  for (let vertex = 0; vertex < heights.length; vertex += 1) {
    const height = dot(vertexAt(solid, vertex), direction);
    heights[vertex] = height;
    most = Math.max(most, height);
  }
  // Nothing bulges farther over its chord than the facet error.
  const near = most - 1.01 * solid.facetError;
  for (const [from, to, surfaces] of curvedEdgesAbove(solid, heights, near)) {
    most = Math.max(most, highestOfEdge(solid, from, to, surfaces, direction));
  }
  for (const point of highestOfFaces(solid, heights, near, direction)) most = Math.max(most, dot(point, direction));
  return most;
}

const vertexAt = (solid: Solid, vertex: number): Vector3 => [
  solid.positions[3 * vertex] ?? 0,
  solid.positions[3 * vertex + 1] ?? 0,
  solid.positions[3 * vertex + 2] ?? 0,
];

/** Edges between two surfaces, at least one of them curved, with an end above the height; each once. */
function curvedEdgesAbove(
  solid: Solid,
  heights: Float64Array,
  near: number,
): [number, number, [Surface, Surface]][] {
  const sides = new Map<string, number>();
  const found: [number, number, [Surface, Surface]][] = [];
  solid.faceOfTriangle.forEach((face, triangle) => {
    for (let k = 0; k < 3; k += 1) {
      const from = solid.triangles[3 * triangle + k] ?? 0;
      const to = solid.triangles[3 * triangle + ((k + 1) % 3)] ?? 0;
      if (Math.max(heights[from] ?? 0, heights[to] ?? 0) < near) continue;
      const own = solid.faces[face]?.surface ?? 0;
      const other = sides.get(`${to} ${from}`);
      sides.set(`${from} ${to}`, own);
      if (other === undefined || other === own) continue;
      const [a, b] = [solid.surfaces[own], solid.surfaces[other]];
      if (a === undefined || b === undefined || (a.kind === 'plane' && b.kind === 'plane')) continue;
      found.push([from, to, [a, b]]);
    }
  });
  return found;
}

/** The greatest height of the exact curve over an edge's chord, by golden-section search. */
function highestOfEdge(
  solid: Solid,
  from: number,
  to: number,
  surfaces: readonly Surface[],
  direction: Vector3,
): number {
  const [a, b] = [vertexAt(solid, from), vertexAt(solid, to)];
  const limit = 2 * solid.facetError + 1e-6;
  const height = (t: number): number => {
    const chord = add(scale(a, 1 - t), scale(b, t));
    return dot(commonPoint(surfaces, chord, limit) ?? chord, direction);
  };
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [0, 1];
  for (let round = 0; round < 40; round += 1) {
    const step = golden * (high - low);
    if (height(high - step) > height(low + step)) high = low + step;
    else low = high - step;
  }
  return height((low + high) / 2);
}

/** Points where a ball or a ring is highest, where these lie on the solid's own face. */
function highestOfFaces(solid: Solid, heights: Float64Array, near: number, direction: Vector3): Vector3[] {
  const found: Vector3[] = [];
  const tops = solid.surfaces.map((surface) => topOf(surface, direction));
  solid.faceOfTriangle.forEach((face, triangle) => {
    const top = tops[solid.faces[face]?.surface ?? -1];
    if (top === undefined || dot(top, direction) < near) return;
    const corners = [0, 1, 2].map((k) => solid.triangles[3 * triangle + k] ?? 0);
    if (corners.every((vertex) => (heights[vertex] ?? 0) < near)) return;
    const [a, b, c] = corners.map((vertex) => vertexAt(solid, vertex)) as [Vector3, Vector3, Vector3];
    if (liesOver(top, a, b, c, direction)) found.push(top);
  });
  return found;
}

function topOf(surface: Surface, direction: Vector3): Vector3 | undefined {
  if (surface.kind === 'sphere') return add(surface.centre, scale(direction, surface.radius));
  if (surface.kind !== 'torus') return undefined;
  const across = subtract(direction, scale(surface.axis, dot(direction, surface.axis)));
  if (Math.hypot(...across) < 1e-9) return undefined;
  return add(surface.centre, add(scale(unit(across), surface.major), scale(direction, surface.minor)));
}

/** True when a point stands over a triangle that is seen from the direction, its border included. */
function liesOver(point: Vector3, a: Vector3, b: Vector3, c: Vector3, direction: Vector3): boolean {
  const side = (p: Vector3, q: Vector3): number => dot(cross(subtract(q, p), subtract(point, p)), direction);
  return side(a, b) >= -1e-12 && side(b, c) >= -1e-12 && side(c, a) >= -1e-12;
}
