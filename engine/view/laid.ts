import { scale } from '../geometry/vector.js';
import type { Solid } from '../solid/model.js';
import { breakerOf, type Breaker } from './breaks.js';
import { Carriers } from './carriers.js';
import { edgeStrands } from './edge-strands.js';
import { flatCurve } from './flat-curve.js';
import { joined } from './join.js';
import { layStrand } from './lay-strand.js';
import type { Camera, ViewCurve } from './model.js';
import { occlusionOf, type Occlusion } from './occlusion.js';
import { withoutOverlaps } from './overlaps.js';
import { piecesOf } from './pieces.js';
import { prepare } from './prepared.js';
import { turnOf, type Turn } from './shadow.js';
import { silhouetteStrands } from './silhouettes.js';
import { pointAt } from './space-curve.js';
import type { Strand } from './strand.js';
import { testPoint } from './test-point.js';

/** A solid's own curves as a camera sees them, and what tells of others whether they are seen. */
export interface Laid {
  readonly curves: readonly ViewCurve[];
  readonly turn: Turn;
  readonly breaker: Breaker;
  readonly hides: Occlusion;
}

/** A facet that stands before a point by no more than this does not hide it, mm. */
export const DEPTH_TOLERANCE = 0.01;

const known = new WeakMap<Solid, Map<string, Laid>>();

/** Made once for each solid and camera and kept as long as the solid. Throws RangeError when the mesh is not closed. */
export function laid(solid: Solid, camera: Camera, smooth: boolean): Laid {
  const views = known.get(solid) ?? new Map<string, Laid>();
  known.set(solid, views);
  const key = JSON.stringify([camera.toward, camera.up, smooth]);
  const found = views.get(key) ?? lay(solid, camera, smooth);
  views.set(key, found);
  return found;
}

function lay(solid: Solid, camera: Camera, smooth: boolean): Laid {
  const prepared = prepare(solid);
  const toEye = scale(camera.toward, -1);
  const turn = turnOf(camera);
  const strands = prepared.edges.flatMap((edge, i) => edgeStrands(solid, edge, i, toEye, turn, smooth));
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
  return { curves, turn, breaker, hides };
}
