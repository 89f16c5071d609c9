import { sizeOf, type Outcome, type RuleTask } from '../rule.js';

const same = (rule: string, because: string, source: string) => ({ value }: RuleTask): Outcome => ({ value, exact: sizeOf(value) ?? 0, rule, because, source });

/** Angles are alike in likes. */
export const angleRule = same('angle', 'angles are the same in a larger part of the same shape', 'geometry');

/** How many there are is first kept; where strength asks for more, that is looked at when the threads are known. */
export const countRule = same('count', 'as many as before', 'common practice: the look of the engine');

export const choiceRule = same('choice', 'a way of making it, not a size', 'geometry');
