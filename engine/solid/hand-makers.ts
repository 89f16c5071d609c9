import type { Manifold } from 'manifold-3d/manifold';
import { withBodies, type Kernel } from './kernel.js';
import { faceAreas } from './measure.js';
import { heldBody } from './mesh-body.js';
import type { Solid } from './model.js';
import type { Fit } from './hand-fit.js';
import { isItsOwnInverse, moveSolid } from './transform.js';

/** A cut and the volume by which it makes the hand, mm3. */
export interface Maker {
  readonly cut: string;
  readonly volume: number;
}

/**
 * What only one of a solid and its fitted mirror image has. Pieces that are no thicker than the facets are off come from
 * the facets and are left out, unless a surface that they lie on falls on nothing. Each piece is shared, by area, among the
 * cuts whose surfaces bound it and fall on nothing in the other body; where there is none, among those that bound it with
 * most of a face (a hole turned over may fall on its own axis), else among all that bound it.
 */
export function leftOver(
  kernel: Kernel,
  solid: Solid,
  fit: Fit,
): { readonly volume: number; readonly makers: readonly Maker[] } {
  const image = moveSolid(fit.motion, solid);
  const shares = new Map<string, number>();
  // Done twice, most such maps change nothing: then what only the image has is the image of what only the solid has.
  const even = isItsOwnInverse(fit.motion);
  withBodies((keep) => {
    const { Manifold } = kernel.booleans;
    const own = heldBody(kernel, solid);
    const mirrored = heldBody(kernel, image);
    const only = [keep(Manifold.difference(own, mirrored))];
    if (!even) only.push(keep(Manifold.difference(mirrored, own)));
    const whole = faceAreas(solid);
    for (const body of only) for (const piece of body.decompose()) shareOut(keep(piece), solid, whole, fit, shares);
  });
  if (even) for (const [cut, volume] of shares) shares.set(cut, 2 * volume);
  const makers = [...shares].map(([cut, volume]) => ({ cut, volume })).filter(({ volume }) => volume > 0);
  makers.sort((a, b) => b.volume - a.volume || (a.cut < b.cut ? -1 : 1));
  return { volume: makers.reduce((sum, maker) => sum + maker.volume, 0), makers };
}

function shareOut(piece: Manifold, solid: Solid, whole: readonly number[], fit: Fit, shares: Map<string, number>): void {
  const volume = piece.volume();
  const thickness = (2 * volume) / piece.surfaceArea();
  if (!(thickness > NOISE)) return;
  const areas = areasByFace(piece);
  const entries = [...areas].map(([face, area]) => {
    const own = solid.faces[face];
    return { cut: own?.tag.cut ?? '', area, share: area / (whole[face] ?? Infinity), matched: fit.matched[own?.surface ?? -1] === true };
  });
  const telling = entries.filter(({ matched }) => !matched);
  if (telling.length === 0 && thickness < 2 * solid.facetError) return;
  const cut = entries.filter((entry) => entry.cut !== 'stock');
  const most = cut.filter(({ share }) => share > 0.5);
  const cuts = telling.length > 0 ? telling : most.length > 0 ? most : cut;
  const bounding = cuts.length > 0 ? cuts : entries;
  const total = bounding.reduce((sum, { area }) => sum + area, 0);
  for (const { cut, area } of bounding) shares.set(cut, (shares.get(cut) ?? 0) + (volume * area) / total);
}

/** Thinner pieces come from the rounding of places to 32 bits, mm. */
const NOISE = 1e-4;

function areasByFace(piece: Manifold): Map<number, number> {
  const mesh = piece.getMesh();
  const areas = new Map<number, number>();
  mesh.faceID.forEach((face, triangle) => {
    const [a, b, c] = [0, 1, 2].map((k) => {
      const at = mesh.numProp * (mesh.triVerts[3 * triangle + k] ?? 0);
      return mesh.vertProperties.subarray(at, at + 3);
    }) as [Float32Array, Float32Array, Float32Array];
    const side = (p: Float32Array, k: number): number => (p[k] ?? 0) - (a[k] ?? 0);
    const x = side(b, 1) * side(c, 2) - side(b, 2) * side(c, 1);
    const y = side(b, 2) * side(c, 0) - side(b, 0) * side(c, 2);
    const z = side(b, 0) * side(c, 1) - side(b, 1) * side(c, 0);
    areas.set(face, (areas.get(face) ?? 0) + Math.sqrt(x * x + y * y + z * z) / 2);
  });
  return areas;
}
