import { between, riskOf, type RiskFinder } from '../chance.js';

/** A cut that is swung about a centre: where the centre stands sets its radius, and the stops its ends. */
export const swungCut: RiskFinder = (facts) =>
  facts.operation.cuts.flatMap(({ name, sizes }) =>
    sizes.flatMap((size) => {
      if (size.kind === 'arc-slot') {
        const [radius, width] = [size.radius.value, size.width.value];
        return [riskOf(facts, { kind: 'swung cut', factor: between(5 / width, 0.5, 3), because: [`${name}: a slot `, { length: width }, ' wide swung at ', { length: radius, sign: 'radius' }, '; an error of the centre goes into its whole length'], figures: { radius, width } })];
      }
      if (size.kind !== 'arc-sides') return [];
      return [riskOf(facts, { kind: 'swung cut', factor: 0.5, because: [`${name}: sides swung at `, { length: size.inner, sign: 'radius' }, ' and ', { length: size.outer, sign: 'radius' }, '; an error of the centre makes them uneven'], figures: { inner: size.inner, outer: size.outer } })];
    }),
  );
