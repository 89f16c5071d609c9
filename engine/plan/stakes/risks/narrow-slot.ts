import { between, riskOf, say, type RiskFinder } from '../chance.js';
import { newFacesReach, sawnDepth } from '../extents.js';

/** So many diameters deep a short end mill goes. */
const shortMill = 3;

/** A thin or long cutter, or a saw, in a slot or pocket that it fills: it bends, and breaks when chips pack. */
export const narrowSlot: RiskFinder = (facts) => {
  const milling = facts.cutters.find(({ kind }) => kind === 'milling' || kind === 'sawing');
  const diameter = milling?.diameter;
  if (milling === undefined || diameter === undefined) return [];
  const saw = milling.kind === 'sawing';
  if (!saw && milling.endMill?.room === undefined) return [];
  const depth = saw ? sawnDepth(facts) : newFacesReach(facts).z;
  const width = saw ? (facts.operation.cutter.width ?? milling.endMill?.room ?? diameter) : diameter;
  const ratio = depth / width;
  if (ratio < shortMill && width >= 3) return [];
  if (ratio < 0.5) return [];
  return [
    riskOf(facts, {
      kind: 'narrow slot',
      factor: between(ratio / 4, 0.3, 3) * between(Math.sqrt(3 / width), 1, 2),
      because: [saw ? 'a saw ' : 'an end mill ', { length: width, ...(saw ? {} : { sign: 'diameter' as const }) }, saw ? ' thick goes ' : ' goes ', { length: depth }, ` deep, ${say(ratio, 1)} times`],
      figures: { cutter: width, depth, depthOverCutter: ratio },
    }),
  ];
};
