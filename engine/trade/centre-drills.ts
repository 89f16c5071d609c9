import { roundTo } from '../units/rounding.js';
import { americanCentreDrills, isoCentreDrills } from './data/centre-drills.js';

/** A 60 degree combined drill and countersink; lengths mm. */
export interface CentreDrill {
  /** As an operation names it: "centre drill No. 1", "centre drill A 1.25 mm". */
  readonly designation: string;
  readonly pilot: number;
  readonly pilotLength: number;
  readonly body: number;
}

const hundredths = (inches: number): number => roundTo(inches * 25.4, 2);

/** Small to large: of ASME B94.11M by number, of ISO 866 type A by pilot. */
export const centreDrills: Readonly<Record<'american' | 'iso', readonly CentreDrill[]>> = {
  american: americanCentreDrills.map(([name, pilot, body, pilotLength]) => ({ designation: `centre drill ${name}`, pilot: hundredths(pilot), pilotLength: hundredths(pilotLength), body: body * 25.4 })),
  iso: isoCentreDrills.map(([pilot, body, pilotLength]) => ({ designation: `centre drill A ${pilot} mm`, pilot, pilotLength, body })),
};

/** A centre bears on a cone: its pilot is so much of the mouth at most (common practice). */
const PILOT_OF_MOUTH = 0.51;

/**
 * The centre drill for a centre hole with a mouth of so many mm: the largest that leaves a cone to bear on, or if its body is
 * narrower than the mouth the smallest that is wide enough; the largest there is where none is.
 */
export function centreDrillFor(mouth: number, system: keyof typeof centreDrills): CentreDrill {
  const wide = centreDrills[system].filter(({ body }) => body >= mouth - 1e-6);
  return wide.filter(({ pilot }) => pilot <= PILOT_OF_MOUTH * mouth).at(-1) ?? wide[0] ?? centreDrills[system].at(-1)!;
}
