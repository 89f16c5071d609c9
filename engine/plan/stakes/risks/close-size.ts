import { closeFrom } from '../../data/stake-limits.js';
import { between, riskOf, type RiskFinder } from '../chance.js';
import type { Operation, Part } from '../../../part/part.js';
import { closeSizes, type CloseSize } from '../tolerances.js';

/** Sizes for which an earlier operation left metal to this one, which takes next to none: a lap or a stone. */
const leftFor = (part: Part, { number, cuts }: Operation): readonly CloseSize[] =>
  cuts.length > 0 ? [] : part.operations.filter(({ leave }) => leave?.some((piece) => typeof piece === 'string' && new RegExp(`\\boperation ${number}\\b`).test(piece))).flatMap((earlier) => closeSizes(part, earlier));

/** A turned, bored or milled size that is held by the cutter itself. Where metal is left for later it is not yet to size. */
export const closeSize: RiskFinder = (facts) => {
  const { part, operation } = facts;
  // What is left for another operation is not to size yet; what is left for the last cut is.
  if (operation.leave?.some((piece) => typeof piece === 'string' && /operation \d/.test(piece)) === true) return [];
  const reamed = new Set(operation.cuts.flatMap(({ sizes }) => sizes.flatMap((size) => (size.kind === 'hole' && size.finish === 'reamed' ? [size.diameter] : []))));
  const closest = [...closeSizes(part, operation), ...leftFor(part, operation)].filter(({ size, width }) => !reamed.has(size) && width < closeFrom - 1e-9).sort((a, b) => a.width - b.width)[0];
  if (closest === undefined) return [];
  return [
    riskOf(facts, {
      kind: 'close size',
      factor: between(0.02 / closest.width, 0.3, 3),
      because: [`${closest.what}: `, { length: closest.size.value }, ' to a tolerance of ', { length: closest.width }, ' in all; a little too much is past it'],
      figures: { size: closest.what, value: closest.size.value, tolerance: closest.width },
    }),
  ];
};
