import { add, dot, scale } from '../../../geometry/vector.js';
import { drillPoint } from '../../../trade/cut-minutes.js';
import { thinFrom } from '../../data/stake-limits.js';
import { holeSizes } from '../../hole-places.js';
import { between, riskOf, type RiskFinder } from '../chance.js';
import type { OperationFacts } from '../facts.js';
import { hitsAlong } from '../ray.js';
import { cutName } from '../cut-name.js';

interface Floor {
  readonly thickness: number;
  readonly behind: string;
}

/**
 * What is left straight on beyond the tips of blind holes, mm: of the holes that are drilled here, and of earlier ones toward
 * which this operation cuts.
 */
function underTips({ part, operation, after }: OperationFacts, own: ReadonlySet<string>): readonly Floor[] {
  const milled = operation.cuts.some(({ forms }) => forms.some(({ kind }) => kind !== 'revolution'));
  return part.operations.slice(0, part.operations.indexOf(operation) + 1).flatMap(holeSizes).flatMap((size) => {
    if (size.kind !== 'hole' || size.depth === undefined) return [];
    const here = own.has(size.cut);
    if (!here && !milled) return [];
    const deep = size.depth.value + drillPoint(size.diameter.value, size.pointAngle);
    return size.points.flatMap((point) => {
      const beyond = hitsAlong(after, add(point, scale(size.direction, deep)), size.direction, 1e-4)[0];
      if (beyond === undefined) return [];
      const met = after.faces[after.faceOfTriangle[beyond.triangle]!]!.tag.cut;
      if (!here && !own.has(met)) return [];
      return [{ thickness: beyond.distance, behind: here ? met : size.cut }];
    });
  });
}

/** A floor so thin that a little too deep goes through it. */
export const blindDepth: RiskFinder = (facts) => {
  if (facts.after === facts.before || facts.setUp.machine === 'bench') return [];
  const own = new Set(facts.operation.cuts.map(({ id }) => id));
  const floors = facts.setUp.machine === 'lathe' ? [] : facts.walls().filter(({ direction }) => Math.abs(dot(direction, facts.frame.z)) >= 0.7);
  const thinnest = [...underTips(facts, own), ...floors].filter(({ thickness }) => thickness < thinFrom).sort((a, b) => a.thickness - b.thickness)[0];
  if (thinnest === undefined) return [];
  const behind = cutName(facts, thinnest.behind);
  return [riskOf(facts, { kind: 'blind depth', factor: between(1 / Math.max(thinnest.thickness, 1e-3), 0.6, 3), because: ['leaves ', { length: thinnest.thickness }, ` below it, to the ${behind}`], figures: { floor: thinnest.thickness, behind } })];
};
