import { between, riskOf, type RiskFinder } from '../chance.js';

/** A thread cut with a tool inside a small bore: it is not seen, and one turn too many runs the tool into the shoulder. */
export const threadToShoulder: RiskFinder = (facts) =>
  facts.operation.cuts.flatMap(({ sizes }) =>
    sizes.flatMap((size) => {
      if (size.kind !== 'internal-thread' || size.method !== 'screw-cut') return [];
      return [
        riskOf(facts, {
          kind: 'thread to a shoulder',
          factor: between(8 / size.core, 0.5, 3),
          because: [`${size.thread.designation} is cut with a tool in a bore of `, { length: size.core, sign: 'diameter' }, ': a turn too many runs it into the shoulder'],
          figures: { thread: size.thread.designation, bore: size.core, pitch: size.thread.pitch },
        }),
      ];
    }),
  );
