import { scale } from '../geometry/vector.js';
import type { Solid } from '../solid/model.js';
import { addedCurves } from './added.js';
import { boundsOf } from './bounds.js';
import { breakerOf } from './breaks.js';
import { Carriers } from './carriers.js';
import { edgeStrands } from './edge-strands.js';
import { flatCurve } from './flat-curve.js';
import { joined } from './join.js';
import { layStrand } from './lay-strand.js';
import type { AddedCurve, Camera, View, ViewCurve } from './model.js';
import { occlusionOf } from './occlusion.js';
import { withoutOverlaps } from './overlaps.js';
import { piecesOf } from './pieces.js';
import { prepare } from './prepared.js';
import { turnOf } from './shadow.js';
import { silhouetteStrands } from './silhouettes.js';
import { pointAt } from './space-curve.js';
import type { Strand } from './strand.js';
import { testPoint } from './test-point.js';

export interface ProjectOptions {
  /** Whether hidden curves are returned too; by default they are. */
  readonly hidden?: boolean;
  /** Curves that the drawing adds, seen where their tested curve is seen. */
  readonly added?: readonly AddedCurve[];
  /** Whether edges between faces that touch smoothly are drawn; by default not. */
  readonly smooth?: boolean;
}

/** A facet that stands before a point by no more than this does not hide it, mm. */
const DEPTH_TOLERANCE = 0.01;

/**
 * The solid as the camera sees it: its edges and outlines as exact curves of the plane, cut where they go out of sight.
 * Of curves that coincide in the view only the nearest is drawn, and nothing hidden lies under what is seen. The order
 * depends on the solid and the camera alone. Throws RangeError when the mesh is not closed.
 */
export function project(solid: Solid, camera: Camera, options: ProjectOptions = {}): View {
  const prepared = prepare(solid);
  const toEye = scale(camera.toward, -1);
  const turn = turnOf(camera);
  const wantSmooth = options.smooth ?? false;
  const strands = prepared.edges.flatMap((edge, i) => edgeStrands(solid, edge, i, toEye, turn, wantSmooth));
  strands.push(...silhouetteStrands(prepared, toEye, turn, prepared.edges.length));
  const carriers = new Carriers();
  for (const strand of strands) layStrand(carriers, strand);

  const hides = occlusionOf(prepared, toEye, turn);
  const seen = (strand: Strand, t0: number, t1: number): boolean => {
    const { edge, surfaces } = strand;
    if (!edge) return !hides(pointAt(strand.curve, (t0 + t1) / 2), { vertices: [], surfaces }, DEPTH_TOLERANCE);
    const { point, vertices } = testPoint(solid, edge, t0, t1);
    return !hides(point, { vertices, surfaces }, DEPTH_TOLERANCE);
  };
  const breaker = breakerOf(carriers.all);
  const pieces = withoutOverlaps(joined(carriers.all.flatMap((carrier) => piecesOf(carrier, breaker, seen))));
  const curves = pieces.map(({ strand, t0, t1, visible }): ViewCurve => ({
    geometry: flatCurve(strand.shadow, t0, t1), visible, role: strand.role, surfaces: strand.surfaces,
  }));
  curves.push(...addedCurves(options.added ?? [], turn, breaker, hides, DEPTH_TOLERANCE + 2 * solid.facetError));
  const wanted = options.hidden ?? true ? curves : curves.filter(({ visible }) => visible);
  return { camera, curves: wanted, box: boundsOf(wanted.map(({ geometry }) => geometry)) };
}
