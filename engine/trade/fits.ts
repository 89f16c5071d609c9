import { UserError } from '../units/user-error.js';
import { inchFitLimits, isInchFit } from './inch-fits.js';
import { isHoleClass, toleranceLimits, type Deviations } from './iso-fits.js';

export { isHoleClass, standardTolerance, toleranceLimits, toleranceMicrometres, type Deviations } from './iso-fits.js';

/** Deviations of hole and shaft, and the play between them, mm; negative play is interference. A lone class has one side. */
export interface FitLimits {
  readonly hole?: Deviations;
  readonly shaft?: Deviations;
  readonly clearance?: { readonly max: number; readonly min: number };
  readonly source: string;
}

const isoSource = 'ISO 286-2:2010 as tabulated';

function together(hole: Deviations, shaft: Deviations, source: string): FitLimits {
  const play = (a: number, b: number): number => Number((a - b).toFixed(6)) + 0;
  return { hole, shaft, clearance: { max: play(hole.upper, shaft.lower), min: play(hole.lower, shaft.upper) }, source };
}

/**
 * Limits of a fit at a nominal size (mm): "H7/g6", "RC4", or one side alone, "H7" or "g6".
 * @throws UserError for a fit that does not exist, two classes of the same side, or a size outside the table.
 */
export function fitLimits(fit: string, size: number): FitLimits {
  if (isInchFit(fit)) {
    const { hole, shaft } = inchFitLimits(fit, size);
    return together(hole, shaft, 'ANSI B4.1-1967');
  }
  const [first = '', second, ...more] = fit.split('/').map((part) => part.trim());
  if (more.length > 0) throw new UserError(`fit "${fit}" has more than two classes: write hole/shaft, such as H7/g6.`);
  if (second === undefined) {
    const side = toleranceLimits(first, size);
    return isHoleClass(first) ? { hole: side, source: isoSource } : { shaft: side, source: isoSource };
  }
  if (isHoleClass(first) === isHoleClass(second)) {
    throw new UserError(`fit "${fit}" needs one hole class (upper case) and one shaft class (lower case), such as H7/g6.`);
  }
  const [hole, shaft] = isHoleClass(first) ? [first, second] : [second, first];
  return together(toleranceLimits(hole, size), toleranceLimits(shaft, size), isoSource);
}
