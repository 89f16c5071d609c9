import { nearestClause } from '../units/nearest-name.js';
import { UserError } from '../units/user-error.js';
import { fitSteps, forceFits, forceFitSteps, slidingFits } from './data/inch-fits.js';
import type { Deviations } from './iso-fits.js';

const names = [...Object.keys(slidingFits), ...Object.keys(forceFits)];

export const isInchFit = (name: string): boolean => /^(RC|LC|LT|LN|FN)\s*\d{1,2}$/i.test(name.trim());

/**
 * Hole and shaft deviations (mm) of an American fit at a nominal size, as ANSI B4.1 tabulates them.
 * @param size nominal size, mm.
 * @throws UserError for a fit that is not tabled, or a size outside its table.
 */
export function inchFitLimits(fit: string, size: number): { readonly hole: Deviations; readonly shaft: Deviations } {
  const name = fit.trim().toUpperCase().replace(/\s+/g, '');
  const table = slidingFits[name] ?? forceFits[name];
  if (table === undefined) throw new UserError(`fit "${fit.trim()}" is not in the table: allowed are ${names.join(', ')}${nearestClause(name, names)}.`);
  const steps = forceFits[name] === undefined ? fitSteps : forceFitSteps;
  const inches = size / 25.4;
  const limits = inches > 0 ? table[steps.findIndex((upTo) => inches <= upTo + 1e-9)] : undefined;
  if (limits === undefined || Number.isNaN(limits[0])) {
    const from = steps[table.findIndex(([upper]) => !Number.isNaN(upper)) - 1] ?? 0;
    throw new UserError(`size ${+inches.toFixed(4)} in is outside the table of fit ${name}: over ${from} up to ${steps[table.length - 1] ?? 0} in.`);
  }
  const [holeUpper, shaftUpper, shaftLower] = limits.map((thou) => Number((thou * 0.0254).toFixed(6))) as [number, number, number];
  return { hole: { upper: holeUpper, lower: 0 }, shaft: { upper: shaftUpper, lower: shaftLower } };
}
