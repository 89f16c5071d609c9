import { dot } from '../../../geometry/vector.js';
import { between, riskOf, type RiskFinder } from '../chance.js';
import { cutName } from '../cut-name.js';

/** A wall beside the cut that springs from the cutter, breaks out or is crushed in the vice. Floors are another kind. */
export const thinWall: RiskFinder = (facts) => {
  const wall = facts.walls().find(({ direction }) => facts.setUp.machine === 'lathe' || Math.abs(dot(direction, facts.frame.z)) < 0.7);
  if (wall === undefined) return [];
  const behind = cutName(facts, wall.behind);
  return [riskOf(facts, { kind: 'thin wall', factor: between(1 / wall.thickness, 0.6, 3), because: ['leaves a wall of ', { length: wall.thickness }, ` to the ${behind}`], figures: { thickness: wall.thickness, behind } })];
};
