import { exactly, type Outcome, type RuleTask } from '../rule.js';

/** A rule for what does not grow: it stays as it is. */
const kept = (rule: string, because: string, source: string) => ({ value, factor }: RuleTask): Outcome => ({ value, exact: exactly((value as number) * factor), rule, because, source });

/** What is left for a later cut hangs on how work is picked up and held, not on its size. */
export const allowanceRule = kept('allowance', 'what a pass takes and a chuck needs does not grow with the part', 'common practice: finishing allowance by pick-up, run-out and lift');

/** A least wall stands for the metal and the way of cutting; where there is no room for it, going down, it is lowered last. */
export const wallRule = kept('wall', 'the least wall that is sound to cut is the same', 'common practice: least walls by metal');

export const edgeRule = kept('edge', 'broken against burrs, as much as a hand feels', 'common practice: 0.2 to 0.5 mm at any size');

export const shopRule = kept('shop', 'the shop’s own tool, which is not bought anew', 'common practice');
