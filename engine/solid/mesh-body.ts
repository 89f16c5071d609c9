import type { Manifold } from 'manifold-3d/manifold';
import type { Kernel } from './kernel.js';
import type { FormMesh } from './swept-mesh.js';
import type { Solid } from './model.js';

/** A mesh handed to the boolean library: its own reserved identity, and for each facet the number of its face. */
function bodyOfMesh(
  kernel: Kernel,
  positions: Float64Array,
  triangles: Uint32Array,
  faceNumbers: Uint32Array,
): Manifold {
  const { Manifold, Mesh } = kernel.booleans;
  const mesh = new Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(positions),
    triVerts: triangles,
    faceID: faceNumbers,
    runIndex: Uint32Array.of(0, triangles.length),
    runOriginalID: Uint32Array.of(Manifold.reserveIDs(1)),
  });
  return Manifold.ofMesh(mesh);
}

/** The body of a form; `faceNumbers` numbers the form's faces in the result. */
export function bodyOfForm(kernel: Kernel, mesh: FormMesh, faceNumbers: readonly number[]): Manifold {
  const numbers = mesh.faceOfTriangle.map((face) => faceNumbers[face] ?? 0);
  const used = compact(mesh.positions, mesh.triangles);
  return bodyOfMesh(kernel, used.positions, used.triangles, numbers);
}

const held = new WeakMap<Solid, Manifold>();
const cleared = new FinalizationRegistry<Manifold>((body) => {
  body.delete();
});

/**
 * The body of a solid as `bodyOfSolid` gives it, made once and freed with the solid: it is not to be deleted. Worth it for a
 * solid that is cut or compared again and again.
 */
export function heldBody(kernel: Kernel, solid: Solid): Manifold {
  const known = held.get(solid);
  if (known !== undefined) return known;
  const body = bodyOfSolid(kernel, solid);
  held.set(solid, body);
  cleared.register(solid, body);
  return body;
}

/** The body of a solid, its faces numbered as they are. */
export const bodyOfSolid = (kernel: Kernel, solid: Solid): Manifold =>
  bodyOfMesh(kernel, solid.positions, solid.triangles, solid.faceOfTriangle);

/** Leaves out vertices that no triangle uses. */
export function compact(
  positions: Float64Array,
  triangles: Uint32Array,
): { readonly positions: Float64Array; readonly triangles: Uint32Array } {
  const places = new Int32Array(positions.length / 3).fill(-1);
  const kept: number[] = [];
  const renumbered = triangles.map((vertex) => {
    if (places[vertex] === -1) {
      places[vertex] = kept.length / 3;
      kept.push(positions[3 * vertex] ?? 0, positions[3 * vertex + 1] ?? 0, positions[3 * vertex + 2] ?? 0);
    }
    return places[vertex] ?? 0;
  });
  return { positions: Float64Array.from(kept), triangles: renumbered };
}
