import { between, riskOf, type RiskFinder } from '../chance.js';

/** A thread inside a bore that ends at a shoulder: it is not seen, and one turn too many runs into it; a tool sooner than a tap. */
export const threadToShoulder: RiskFinder = (facts) =>
  facts.operation.cuts.flatMap(({ sizes }) =>
    sizes.flatMap((size) => {
      if (size.kind !== 'internal-thread') return [];
      const tapped = size.method === 'tap';
      return [
        riskOf(facts, {
          kind: 'thread to a shoulder',
          factor: between(8 / size.core, 0.5, 3) * (tapped ? 0.5 : 1),
          because: [`${size.thread.designation} is ${tapped ? 'tapped' : 'cut with a tool'} in a bore of `, { length: size.core, sign: 'diameter' }, `: a turn too many runs ${tapped ? 'the tap' : 'it'} into the shoulder`],
          figures: { thread: size.thread.designation, bore: size.core, pitch: size.thread.pitch, method: size.method },
        }),
      ];
    }),
  );
