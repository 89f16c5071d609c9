import type { Part } from '../../../part/part.js';
import { clearFrom } from '../../data/stake-limits.js';
import { between, riskOf, type RiskFinder } from '../chance.js';

/** A neighbour lower than this is no wall, mm. */
const low = 0.5;

const nameOf = (part: Part, cut: string): string => (cut === 'stock' ? 'a face of the bar' : (part.operations.flatMap(({ cuts }) => cuts).find(({ id }) => id === cut)?.name ?? cut));

/** A milling cutter that passes a wall or a boss which must not be touched: the nearest of them. */
export const besideWall: RiskFinder = (facts) => {
  if (!facts.cutters.some(({ kind }) => kind === 'milling' || kind === 'counterboring')) return [];
  const near = facts.beside().filter(({ distance, height }) => distance < clearFrom && height >= low);
  const nearest = [...near].sort((a, b) => a.distance - b.distance || b.height - a.height)[0];
  if (nearest === undefined) return [];
  const what = nameOf(facts.part, nearest.what.cut);
  return [
    riskOf(facts, {
      kind: 'cutter beside a wall',
      factor: between(0.5 / Math.max(nearest.distance, 1e-6), 0.15, 2),
      because: nearest.distance < 1e-3 ? [`the cutter runs right up to ${what}, which stands `, { length: nearest.height }, ' high'] : ['the cutter clears ', what, ' by ', { length: nearest.distance }, ', which stands ', { length: nearest.height }, ' high'],
      figures: { beside: what, clearance: nearest.distance, height: nearest.height },
    }),
  ];
};
