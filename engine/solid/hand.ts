import type { Part } from '../part/part.js';
import { solidOf, type SolidOptions } from './build.js';
import { handCandidates } from './hand-candidates.js';
import { featuresOf } from './hand-features.js';
import { fitMirrored, surfaceAreas, type Fit } from './hand-fit.js';
import { leftOver, type Maker } from './hand-makers.js';
import type { Kernel } from './kernel.js';
import { multiply, reflection } from './matrix.js';
import { faceAreas, massProperties } from './measure.js';
import type { Solid } from './model.js';
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
const HAND_SEGMENTS = 32;

/** Maps that leave up to so many times the least area unmatched are compared by volume, and no more than `TRIED`. */
const LIKELY = 1.5;
const TRIED = 6;

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
  const fits = handCandidates(featuresOf(solid.surfaces, mass), mass)
    .map((matrix) => fitMirrored(matrix, solid, areas, mass))
    .sort((a, b) => a.unmatched - b.unmatched);
  let best: { fit: Fit; left: ReturnType<typeof leftOver> } | undefined;
  const least = fits[0]?.unmatched ?? 0;
  const likely = fits.filter(({ unmatched }) => unmatched <= LIKELY * least);
  // Where every surface falls on one, only the volumes can tell: none of those maps may be passed over.
  for (const fit of least === 0 ? likely : likely.slice(0, TRIED)) {
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
