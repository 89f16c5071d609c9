import { dot, subtract } from '../../../geometry/vector.js';
import { closedPlanes } from '../../cut-planes.js';
import { clearFrom } from '../../data/stake-limits.js';
import { between, riskOf, type RiskFinder } from '../chance.js';
import type { OperationFacts } from '../facts.js';
import { newFacesReach } from '../extents.js';
import { cutName } from '../cut-name.js';

/** A neighbour lower than this is no wall, mm. */
const low = 0.5;

/**
 * A milling cutter that passes a wall or a boss which must not be touched, the nearest of them; else one that runs round a pad
 * which it must leave standing.
 */
export const besideWall: RiskFinder = (facts) => {
  const radius = Math.max(0, ...facts.cutters.filter(({ kind }) => kind === 'milling' || kind === 'counterboring').map(({ diameter }) => (diameter ?? 0) / 2));
  if (radius === 0) return [];
  const near = facts.beside().filter(({ distance, height }) => distance < Math.max(clearFrom, radius) && height >= low);
  const nearest = [...near].sort((a, b) => a.distance - b.distance || b.height - a.height)[0];
  if (nearest === undefined) return padLeft(facts);
  const what = cutName(facts, nearest.what.cut);
  const stands = ['; it stands ', { length: nearest.height }, ' high'] as const;
  return [
    riskOf(facts, {
      kind: 'cutter beside a wall',
      factor: between(Math.sqrt(0.5 / Math.max(nearest.distance, 1e-6)), 0.2, 2),
      because: nearest.distance < 1e-3 ? [`the cutter runs right up to the ${what}`, ...stands] : ['beyond the edge of the cut the cutter has ', { length: nearest.distance }, ` to the ${what}`, ...stands],
      figures: { beside: what, clearance: nearest.distance, height: nearest.height },
    }),
  ];
};

/** Two walls of a cut with metal between them: the cutter passes on both sides of what must stay. */
function padLeft(facts: OperationFacts): ReturnType<RiskFinder> {
  const { part, operation, frame } = facts;
  const pads = operation.cuts.flatMap((cut) => {
    const walls = closedPlanes(part, cut).filter(({ normal }) => Math.abs(dot(normal, frame.z)) < 1e-9);
    return walls.flatMap((a, i) => walls.slice(i + 1).flatMap((b) => {
      const width = dot(subtract(a.point, b.point), a.normal);
      return dot(a.normal, b.normal) < -1 + 1e-9 && width > 1e-6 ? [{ cut, width }] : [];
    }));
  });
  const narrowest = [...pads].sort((a, b) => a.width - b.width)[0];
  const height = newFacesReach(facts).z;
  if (narrowest === undefined || height < low) return [];
  return [riskOf(facts, { kind: 'cutter beside a wall', factor: 1, because: ['the cutter passes on both sides of a pad ', { length: narrowest.width }, ' wide that must stay, ', { length: height }, ' high'], figures: { beside: narrowest.cut.name, width: narrowest.width, height } })];
}
