import { riskOf, say, type RiskFinder } from '../chance.js';

/** A cut that makes less of the hand than this is none that one gets wrong by its side. */
const least = 0.01;

/** A cut that makes the part right-hand or left-hand: on the wrong side it makes a part for the other side of the engine. */
export const handedPosition: RiskFinder = (facts) => {
  const handed = facts.handed.filter(({ share }) => share >= least);
  if (handed.length === 0) return [];
  const share = handed.reduce((sum, part) => sum + part.share, 0);
  const names = handed.map(({ cut }) => facts.operation.cuts.find(({ id }) => id === cut)?.name ?? cut);
  return [
    riskOf(facts, {
      kind: 'handed position',
      factor: 1,
      because: [`${[...new Set(names)].join(' and ')}: ${say(100 * share, 0)} % of what tells the ${facts.part.hand} hand from the other is cut here`],
      figures: { hand: facts.part.hand, share },
    }),
  ];
};
