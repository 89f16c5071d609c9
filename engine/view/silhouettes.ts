import type { Vector3 } from '../geometry/vector.js';
import type { Surface } from '../solid/model.js';
import type { Prepared } from './prepared.js';
import { ruledSilhouette, sphereSilhouette } from './ruled-silhouettes.js';
import { shadowOf, type Turn } from './shadow.js';
import { between, type Silhouette } from './silhouette-ends.js';
import { tracesOf, type Trace } from './silhouette-traces.js';
import { pointAt } from './space-curve.js';
import type { Strand } from './strand.js';
import { radialCurvature, torusSilhouettes } from './torus-silhouettes.js';
import { searched } from './turning.js';

/** The outlines of all curved faces as seen along `-toEye`, numbered from `firstParent`. */
export function silhouetteStrands(prepared: Prepared, toEye: Vector3, turn: Turn, firstParent: number): Strand[] {
  const { surfaces } = prepared.solid;
  let parent = firstParent;
  return tracesOf(prepared, toEye).flatMap((trace) => {
    const surface = surfaces[trace.sheet >> 1]!;
    const bounds = trace.ends.map((index) => (index === undefined ? undefined : surfaces[index]));
    const inward = (trace.sheet & 1) === 1;
    return silhouettesOf(surface, trace, bounds, toEye).flatMap(({ curve, low, high }) => {
      const own = { parent: parent++, curve, shadow: shadowOf(curve, turn), role: 'silhouette' as const };
      const stops = surface.kind === 'torus' ? [low, ...searched((t) => radialCurvature(surface, pointAt(curve, t), toEye), low, high), high] : [low, high];
      return stops.slice(1).map((to, i): Strand => {
        const from = stops[i]!;
        const bulges = surface.kind !== 'torus' || radialCurvature(surface, pointAt(curve, (from + to) / 2), toEye) > 0;
        // Where the face is hollow along the line of sight, its own material stands before its outline.
        const covered = bulges === inward;
        return { ...own, low: from, high: to, surfaces: [trace.sheet >> 1, trace.sheet >> 1], covered, outline: !covered };
      });
    });
  });
}

function silhouettesOf(surface: Surface, trace: Trace, bounds: readonly (Surface | undefined)[], toEye: Vector3): Silhouette[] {
  switch (surface.kind) {
    case 'plane':
      return [];
    case 'cylinder':
    case 'cone':
      return between(ruledSilhouette(surface, middleOf(trace), toEye), trace, bounds);
    case 'sphere':
      return between(sphereSilhouette(surface, toEye), trace, bounds);
    case 'torus':
      return torusSilhouettes(surface, trace, bounds, toEye);
  }
}

const middleOf = ({ points }: Trace): Vector3 => points[points.length >> 1]!;
