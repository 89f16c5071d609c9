import type { Solid } from './model.js';

/** Solids that stand beside each other, as one mesh, in their order: faces and surfaces of the first keep their numbers. */
export function mergedSolid(solids: readonly Solid[]): Solid {
  const [only] = solids;
  if (solids.length === 1 && only !== undefined) return only;
  const total = (count: (solid: Solid) => number): number => solids.reduce((sum, solid) => sum + count(solid), 0);
  const positions = new Float64Array(total((solid) => solid.positions.length));
  const triangles = new Uint32Array(total((solid) => solid.triangles.length));
  const faceOfTriangle = new Uint32Array(total((solid) => solid.faceOfTriangle.length));
  const [faces, surfaces]: [Solid['faces'][number][], Solid['surfaces'][number][]] = [[], []];
  let [vertex, corner, triangle] = [0, 0, 0];
  for (const solid of solids) {
    positions.set(solid.positions, 3 * vertex);
    triangles.set(solid.triangles.map((each) => each + vertex), corner);
    faceOfTriangle.set(solid.faceOfTriangle.map((face) => face + faces.length), triangle);
    const before = surfaces.length;
    faces.push(...solid.faces.map(({ tag, surface }) => ({ tag, surface: surface + before })));
    surfaces.push(...solid.surfaces);
    vertex += solid.positions.length / 3;
    corner += solid.triangles.length;
    triangle += solid.faceOfTriangle.length;
  }
  return { positions, triangles, faceOfTriangle, faces, surfaces, facetError: Math.max(...solids.map(({ facetError }) => facetError)) };
}
