import type { Solid } from '../solid/model.js';
import { addedCurves } from './added.js';
import { boundsOf } from './bounds.js';
import { DEPTH_TOLERANCE, laid } from './laid.js';
import { mirrorAdded, mirrorCamera, mirrorView } from './mirrored.js';
import type { AddedCurve, Camera, View } from './model.js';

export interface ProjectOptions {
  /** Whether hidden curves are returned too; by default they are. */
  readonly hidden?: boolean;
  /** Curves that the drawing adds, seen where their tested curve is seen. */
  readonly added?: readonly AddedCurve[];
  /** Whether edges between faces that touch smoothly are drawn; by default not. */
  readonly smooth?: boolean;
}

/**
 * The solid as the camera sees it: its edges and outlines as exact curves of the plane, cut where they go out of sight.
 * Of curves that coincide in the view only the nearest is drawn, and nothing hidden lies under what is seen. The order
 * depends on the solid and the camera alone. The view of a mirror image is a mirrored view of the solid that it is the
 * image of. Throws RangeError when the mesh is not closed.
 */
export function project(solid: Solid, camera: Camera, options: ProjectOptions = {}): View {
  if (solid.imageOf !== undefined) {
    const { axis, solid: source } = solid.imageOf;
    const added = (options.added ?? []).map((each) => mirrorAdded(axis, each));
    return mirrorView(project(source, mirrorCamera(axis, camera), { ...options, added }), camera);
  }
  const { curves, turn, breaker, hides } = laid(solid, camera, options.smooth ?? false);
  const all = [...curves, ...addedCurves(options.added ?? [], turn, breaker, hides, DEPTH_TOLERANCE + 2 * solid.facetError)];
  const wanted = options.hidden ?? true ? all : all.filter(({ visible }) => visible);
  return { camera, curves: wanted, box: boundsOf(wanted.map(({ geometry }) => geometry)) };
}
