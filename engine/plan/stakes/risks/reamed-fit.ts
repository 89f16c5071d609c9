import { between, riskOf, type RiskFinder } from '../chance.js';
import { widthOf } from '../tolerances.js';

/** A reamed hole to a fit: it comes out large, bell-mouthed or scored, and no smaller hole can be had again. */
export const reamedFit: RiskFinder = (facts) =>
  facts.operation.cuts.flatMap(({ name, sizes }) =>
    sizes.flatMap((size) => {
      const width = size.kind === 'hole' && size.finish === 'reamed' ? widthOf(size.diameter.tolerance) : undefined;
      if (size.kind !== 'hole' || width === undefined) return [];
      return [
        riskOf(facts, {
          kind: 'reamed fit',
          factor: between(0.015 / width, 0.5, 3),
          holes: size.points.length,
          because: [`${name}: reamed `, { length: size.diameter.value, sign: 'diameter' }, ' to a tolerance of ', { length: width }, '; a reamer that cuts large cannot be taken back'],
          figures: { diameter: size.diameter.value, tolerance: width },
        }),
      ];
    }),
  );
