import { vectorOf } from '../../../part/author/directions.js';
import { holeSizes } from '../../hole-places.js';
import { riskOf, say, type RiskFinder } from '../chance.js';
import { isAngled } from '../facts.js';

const degrees = (cosine: number): number => (Math.acos(Math.min(1, cosine)) * 180) / Math.PI;

/** Work packed up at an angle, or holes that lean: nothing on the machine counts along the part. */
export const angledSetUp: RiskFinder = (facts) => {
  const { setUp, operation } = facts;
  if (isAngled(setUp) && operation.cuts.length > 0) {
    const angle = degrees(Math.max(...vectorOf(setUp.up).map(Math.abs)));
    return [riskOf(facts, { kind: 'angled set-up', factor: 1, because: [`the work is packed up at ${say(angle)}°: an error of the packing goes into the face, and no dial counts along the part`], figures: { angle } })];
  }
  const leaning = holeSizes(operation).find(({ lean }) => lean !== undefined);
  if (leaning?.lean === undefined) return [];
  return [riskOf(facts, { kind: 'angled set-up', factor: 0.8, because: [`the hole leans ${say(leaning.lean.angle)}°: the drill starts on a slope and its depth is counted along it`], figures: { angle: leaning.lean.angle } })];
};
