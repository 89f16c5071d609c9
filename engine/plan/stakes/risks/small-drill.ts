import { smallDrill as small, shallow } from '../../data/stake-limits.js';
import { holeSizes } from '../../hole-places.js';
import { between, holesInWords, riskOf, say, type RiskFinder } from '../chance.js';
import { depthOf } from '../times/holes.js';

/** A thin drill that goes deep wanders, packs with chips and breaks. */
export const smallDrill: RiskFinder = (facts) =>
  holeSizes(facts.operation).flatMap((size) => {
    if (size.kind !== 'hole' || size.finish !== 'drilled' || size.diameter.value > small) return [];
    const diameter = size.diameter.value;
    const depth = depthOf(facts, size);
    const ratio = depth / diameter;
    if (ratio <= shallow) return [];
    return [
      riskOf(facts, {
        kind: 'small drill',
        factor: between(ratio / 3, 0.5, 5) * between(1.5 / diameter, 0.5, 3),
        holes: size.points.length,
        because: ['drill ', { length: diameter, sign: 'diameter' }, ' goes ', { length: depth }, ` deep in ${holesInWords(size.points.length)}, ${say(ratio, 1)} diameters`],
        figures: { diameter, depth, depthOverDiameter: ratio },
      }),
    ];
  });
