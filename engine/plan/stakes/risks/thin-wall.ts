import { dot } from '../../../geometry/vector.js';
import { thinFrom } from '../../data/stake-limits.js';
import { between, riskOf, type RiskFinder } from '../chance.js';
import type { OperationFacts } from '../facts.js';
import { wallsLeft } from '../walls-left.js';

/** Name of a cut as a machinist calls it. */
export const cutName = ({ part }: OperationFacts, id: string): string => (id === 'stock' ? 'the face of the bar' : (part.operations.flatMap(({ cuts }) => cuts).find((cut) => cut.id === id)?.name ?? id));

/** A wall beside the cut that springs from the cutter, breaks out or is crushed in the vice. Floors are another kind. */
export const thinWall: RiskFinder = (facts) => {
  if (facts.after === facts.before) return [];
  const own = new Set(facts.operation.cuts.map(({ id }) => id));
  const wall = wallsLeft(facts.after, own, thinFrom).find(({ direction }) => facts.setUp.machine === 'lathe' || Math.abs(dot(direction, facts.frame.z)) < 0.7);
  if (wall === undefined) return [];
  const behind = cutName(facts, wall.behind);
  return [riskOf(facts, { kind: 'thin wall', factor: between(1 / wall.thickness, 0.6, 3), because: ['leaves a wall of ', { length: wall.thickness }, ` to ${behind}`], figures: { thickness: wall.thickness, behind } })];
};
