import { cross, length, subtract, type Vector3 } from '../../engine/geometry/vector.js';
import type { Solid } from '../../engine/solid/model.js';
import { faceAreas } from '../../engine/solid/measure.js';
import { offsetFrom } from '../../engine/solid/surface.js';

/** Directed edges that are not met by exactly one edge the other way; a closed oriented mesh has none. */
export function unpairedEdges(solid: Solid): number {
  const seen = new Map<string, number>();
  const { triangles } = solid;
  for (let i = 0; i < triangles.length; i += 3) {
    for (let k = 0; k < 3; k += 1) {
      const key = `${triangles[i + k]} ${triangles[i + ((k + 1) % 3)]}`;
      seen.set(key, (seen.get(key) ?? 0) + 1);
    }
  }
  let unpaired = 0;
  for (const [key, count] of seen) {
    const [from, to] = key.split(' ');
    if (count !== 1 || seen.get(`${to} ${from}`) !== 1) unpaired += 1;
  }
  return unpaired;
}

export const vertexOf = (solid: Solid, vertex: number): Vector3 => [
  solid.positions[3 * vertex] ?? NaN,
  solid.positions[3 * vertex + 1] ?? NaN,
  solid.positions[3 * vertex + 2] ?? NaN,
];

export const cornersOf = (solid: Solid, triangle: number): [Vector3, Vector3, Vector3] => {
  const at = (k: number): Vector3 => vertexOf(solid, solid.triangles[3 * triangle + k] ?? -1);
  return [at(0), at(1), at(2)];
};

/** The greatest distance of a facet's corner from the surface of its face, mm. */
export function worstVertex(solid: Solid): number {
  let worst = 0;
  solid.faceOfTriangle.forEach((face, triangle) => {
    const surface = solid.surfaces[solid.faces[face]?.surface ?? -1];
    if (surface === undefined) throw new Error(`facet ${triangle} has no surface`);
    for (const corner of cornersOf(solid, triangle)) {
      worst = Math.max(worst, Math.abs(offsetFrom(surface, corner).distance));
    }
  });
  return worst;
}

/** Number of vertices that are off a surface of theirs by more than `within` mm. */
export function verticesOff(solid: Solid, within: number): number {
  const off = new Set<number>();
  solid.faceOfTriangle.forEach((face, triangle) => {
    const surface = solid.surfaces[solid.faces[face]?.surface ?? -1];
    cornersOf(solid, triangle).forEach((corner, k) => {
      const distance = surface === undefined ? NaN : Math.abs(offsetFrom(surface, corner).distance);
      if (!(distance <= within)) off.add(solid.triangles[3 * triangle + k] ?? -1);
    });
  });
  return off.size;
}

/** The greatest distance of a facet's middle from the surface of its face, mm. */
export function worstMiddle(solid: Solid): number {
  let worst = 0;
  solid.faceOfTriangle.forEach((face, triangle) => {
    const surface = solid.surfaces[solid.faces[face]?.surface ?? -1];
    const [a, b, c] = cornersOf(solid, triangle);
    const middle: Vector3 = [(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3, (a[2] + b[2] + c[2]) / 3];
    if (surface !== undefined) worst = Math.max(worst, Math.abs(offsetFrom(surface, middle).distance));
  });
  return worst;
}

/** How far the volume of the facets may be from the exact one: the area of the curved faces times the facet error, mm3. */
export function volumeBound(solid: Solid): number {
  const curved = faceAreas(solid).filter((_, face) => solid.surfaces[solid.faces[face]?.surface ?? -1]?.kind !== 'plane');
  return 1e-6 + curved.reduce((sum, area) => sum + area, 0) * solid.facetError * 1.01;
}

/** The least height of a facet over its longest side, mm. */
export function thinnestFacet(solid: Solid): number {
  let thinnest = Infinity;
  solid.faceOfTriangle.forEach((_, triangle) => {
    const [a, b, c] = cornersOf(solid, triangle);
    const longest = Math.max(length(subtract(b, a)), length(subtract(c, b)), length(subtract(a, c)));
    thinnest = Math.min(thinnest, length(cross(subtract(b, a), subtract(c, a))) / longest);
  });
  return thinnest;
}
