import { bench, describe } from 'vitest';
import { findingsOf } from '../../engine/plan/order/findings.js';
import { statesOf } from '../../engine/plan/states/state.js';
import { compareHands } from '../../engine/solid/hand.js';
import { loadKernel } from '../../engine/solid/kernel.js';
import { defaultShop } from '../../engine/trade/shop/shop.js';
import { builtInPart } from '../support/built-in-part.js';

const kernel = await loadKernel();
const part = await builtInPart('crosshead');
const states = statesOf(kernel, part);
const comparison = compareHands(kernel, part);
/** Findings of states that no check has looked at yet: what is kept for a solid is kept by the solid itself. */
const anew = () => {
  const copies = new Map(states.flatMap(({ before, after }) => [before, after]).map((solid) => [solid, { ...solid }]));
  return states.map((state) => ({ ...state, before: copies.get(state.before)!, after: copies.get(state.after)! }));
};

describe('findings on the order of the crosshead, 22 operations', () => {
  bench('solids not yet looked at', () => {
    findingsOf(kernel, part, anew(), defaultShop, 'in', comparison);
  });
  bench('the same solids again', () => {
    findingsOf(kernel, part, states, defaultShop, 'in', comparison);
  });
});
