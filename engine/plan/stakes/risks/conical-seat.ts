import type { Cut } from '../../../part/cut.js';
import { turnedSteps } from '../../turned-steps.js';
import { between, riskOf, say, type RiskFinder } from '../chance.js';
import { subtract, dot } from '../../../geometry/vector.js';

const tangentOf = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/** A texture this fine is asked of a cone that seats, Ra in micrometres. */
const seating = 1.6;

const isSeat = ({ faces }: Cut): boolean => Object.values(faces).some(({ texture }) => texture !== undefined && texture <= seating);

/** The included angle of a taper that is turned, degrees; undefined for none. */
function taperOf(cut: Cut): number | undefined {
  const taper = turnedSteps(cut).find(({ from, to }) => Math.abs(from.radius - to.radius) > 1e-6);
  if (taper === undefined) return undefined;
  const along = Math.abs(dot(subtract(taper.to.point, taper.from.point), taper.axis));
  return along < 1e-9 ? undefined : (2 * Math.atan2(Math.abs(taper.from.radius - taper.to.radius), along) * 180) / Math.PI;
}

/** A cone that must seat: its mouth grows with every touch by twice the depth x the tangent of half its angle. */
export const conicalSeat: RiskFinder = (facts) =>
  facts.operation.cuts.filter(isSeat).flatMap((cut) => {
    const sunk = cut.sizes.find((size) => size.kind === 'countersink');
    const angle = sunk?.kind === 'countersink' ? sunk.angle : taperOf(cut);
    if (angle === undefined) return [];
    const grows = 2 * tangentOf(angle / 2);
    return [
      riskOf(facts, {
        kind: 'conical seat',
        factor: between(grows / 2, 0.3, 2),
        because: [`${cut.name}: at ${say(angle)}° the diameter changes by ${say(grows)} times what the cutter goes too far, and the fit of the cone shows only when it is tried`],
        figures: { angle, growth: grows },
      }),
    ];
  });
