import { between, riskOf, say, type RiskFinder } from '../chance.js';
import { spanAlong } from '../extents.js';
import type { Vector3 } from '../../../geometry/vector.js';

const axes: readonly Vector3[] = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];

/** Hardening bends, cracks and scales finished work. */
export const hardening: RiskFinder = (facts) => {
  const { operation, after } = facts;
  if (operation.cuts.length > 0 || !(/harden|quench/i.test(operation.title) || (operation.caution ?? []).includes('oil-quench'))) return [];
  const spans = axes.map((axis) => spanAlong(after, axis) ?? [0, 0]).map(([low, high]) => high - low).sort((a, b) => a - b);
  const [thick = 1, , long = 1] = spans;
  const ratio = long / thick;
  return [riskOf(facts, { kind: 'hardening', factor: between(ratio / 5, 0.5, 3), because: ['hardening can bend and crack it: ', { length: long }, ' long and ', { length: thick }, ` thick, ${say(ratio, 1)} times`], figures: { length: long, thickness: thick, slenderness: ratio } })];
};
