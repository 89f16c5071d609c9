import type { Part } from '../part/part.js';
import { solidOf, type SolidOptions } from './build.js';
import { handCandidates } from './hand-candidates.js';
import { columnsOf, estimateDifference } from './hand-estimate.js';
import { featuresOf } from './hand-features.js';
import { fitMirrored, surfaceAreas, type Fit } from './hand-fit.js';
import { leftOver, type Maker } from './hand-makers.js';
import type { Kernel } from './kernel.js';
import { multiply, reflection, type Matrix3 } from './matrix.js';
import { faceAreas, massProperties } from './measure.js';
import type { Solid } from './model.js';
import { SurfaceTable } from './surface-table.js';
import type { Motion } from './transform.js';

/** What tells a part from its mirror image. */
export interface HandComparison {
  readonly handed: boolean;
  /** Takes the mirrored part (as `mirrorPart` makes it) to where it differs least from the part. */
  readonly rotation: Motion;
  /** Volume that only one of the two has, mm3; 0 when the part is not handed. */
  readonly leftOver: number;
  /** The cuts that bound what is left over, most first; their volumes add up to `leftOver`. */
  readonly makers: readonly Maker[];
}

/** Differences are looked for on coarse facets: they are judged by their exact surfaces. */
export const HAND_SEGMENTS = 32;

/** So many maps of features, those that leave least area unmatched, are estimated by volume beside those of the axes. */
const ESTIMATED = 16;

/** Maps whose estimated difference is within this part of the volume of the least are compared exactly, up to `TRIED`. */
const LIKELY = 0.004;
const TRIED = 4;

/**
 * Compares a part with its mirror image under all rotations that could bring them together. A part that has any mirror
 * symmetry, a rotation with reflection among them, is not handed. Threads do not count: they are right-hand on both.
 */
export const compareHands = (kernel: Kernel, part: Part, options: SolidOptions = {}): HandComparison =>
  compareSolidHands(kernel, solidOf(kernel, part, { segments: options.segments ?? HAND_SEGMENTS }), part.handAxis);

/** The same for a solid, mirrored through the zero of the given axis. */
export function compareSolidHands(kernel: Kernel, solid: Solid, axis: 'x' | 'y' | 'z'): HandComparison {
  const mass = massProperties(solid);
  const areas = surfaceAreas(solid, faceAreas(solid));
  const columns = columnsOf(solid);
  // No two surfaces of the solid are one, so none may be joined here: the table keeps their numbers.
  const table = new SurfaceTable(1e9);
  for (const surface of solid.surfaces) table.surface(surface);
  const { ofAxes, ofFeatures } = handCandidates(featuresOf(solid.surfaces, mass), mass);
  const fitted = (maps: readonly Matrix3[]) =>
    maps.map((matrix) => fitMirrored(matrix, table, areas, mass)).sort((a, b) => a.unmatched - b.unmatched);
  const fits = [...fitted(ofAxes), ...fitted(ofFeatures).slice(0, ESTIMATED)].map((fit) => ({
    ...fit,
    estimate: estimateDifference(columns, solid, fit.motion),
  }));
  const least = Math.min(...fits.map(({ estimate }) => estimate));
  const likely = fits
    .filter(({ estimate }) => estimate <= least + LIKELY * mass.volume)
    .sort((a, b) => a.unmatched - b.unmatched || a.estimate - b.estimate);
  let best: { fit: Fit; left: ReturnType<typeof leftOver> } | undefined;
  for (const fit of likely.filter(({ unmatched }, i) => i < TRIED || unmatched === 0)) {
    const left = leftOver(kernel, solid, fit);
    if (best === undefined || left.volume < best.left.volume) best = { fit, left };
    if (left.volume === 0) break;
  }
  if (best === undefined) throw new RangeError('the solid has no surface to compare');
  const { matrix, shift } = best.fit.motion;
  return {
    handed: best.left.volume > 0,
    rotation: { matrix: multiply(matrix, reflection(axis)), shift },
    leftOver: best.left.volume,
    makers: best.left.makers,
  };
}
