import type { Manifold } from 'manifold-3d/manifold';
import type { Vector3 } from '../geometry/vector.js';
import type { Form } from '../part/form.js';
import { formMesh, type Reach } from './form-mesh.js';
import type { Kernel } from './kernel.js';
import { bodyOfForm } from './mesh-body.js';
import { reversed } from './surface.js';
import type { SurfaceTable } from './surface-table.js';
import type { FormMesh, SweptMesh } from './swept-mesh.js';
import type { TaggedForm } from './tagged-form.js';

/** The box of meshes as its middle and a size that surely covers it from there. */
export function reachOf(positions: readonly Float64Array[]): Reach {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (const list of positions) {
    for (let i = 0; i < list.length; i += 1) {
      const value = list[i] ?? 0;
      if (value < (low[i % 3] ?? 0)) low[i % 3] = value;
      if (value > (high[i % 3] ?? 0)) high[i % 3] = value;
    }
  }
  const middle = low.map((value, k) => (value + (high[k] ?? 0)) / 2);
  const size = Math.hypot(...low.map((value, k) => (high[k] ?? 0) - value));
  return { centre: middle as unknown as Vector3, size: Number.isFinite(size) ? size + 1 : 1 };
}

/** Meshes of the forms that bound themselves; the reach of half-spaces follows from these. */
export function meshesOf(
  kernel: Kernel,
  forms: readonly Form[],
  segments: number,
  reach: Reach,
  memo: Map<string, SweptMesh>,
): FormMesh[] {
  return forms.map((form) => formMesh(kernel.sweep, form, { segments, reach, memo }));
}

/**
 * Enters the forms' faces in the table and makes their bodies. Planes of what is taken away face the other way: their
 * normals point out of the material that is left.
 */
export function bodiesOf(
  kernel: Kernel,
  items: readonly TaggedForm[],
  meshes: readonly FormMesh[],
  table: SurfaceTable,
  removed: boolean,
  keep: (body: Manifold) => Manifold,
): Manifold[] {
  return meshes.map((mesh, i) => {
    const cut = items[i]?.cut ?? '';
    const numbers = mesh.faces.map(({ face, surface, sag }) =>
      table.face({ cut, face }, removed ? reversed(surface) : surface, sag),
    );
    return keep(bodyOfForm(kernel, mesh, numbers));
  });
}
