import { closeFrom } from '../../data/stake-limits.js';
import { between, riskOf, type RiskFinder } from '../chance.js';
import { closeSizes } from '../tolerances.js';

/** A turned, bored or milled size that is held by the cutter itself. Where metal is left for later it is not yet to size. */
export const closeSize: RiskFinder = (facts) => {
  const { part, operation } = facts;
  // On the bar's last cut "leave" is for the finishing pass here and now, on a mill; a lathe leaves it for another operation.
  if (operation.leave !== undefined && facts.setUp.machine === 'lathe') return [];
  const reamed = new Set(operation.cuts.flatMap(({ sizes }) => sizes.flatMap((size) => (size.kind === 'hole' && size.finish === 'reamed' ? [size.diameter] : []))));
  const closest = closeSizes(part, operation).filter(({ size, width }) => !reamed.has(size) && width < closeFrom - 1e-9).sort((a, b) => a.width - b.width)[0];
  if (closest === undefined) return [];
  return [
    riskOf(facts, {
      kind: 'close size',
      factor: between(0.02 / closest.width, 0.3, 3),
      because: [`${closest.what}: `, { length: closest.size.value }, ' to a tolerance of ', { length: closest.width }, ' in all; one pass too many is past it'],
      figures: { size: closest.what, value: closest.size.value, tolerance: closest.width },
    }),
  ];
};
