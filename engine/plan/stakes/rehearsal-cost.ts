import type { OperationFacts } from './facts.js';
import { blankMinutes } from './times/blank.js';
import { setUpMinutes } from './times/holding.js';
import { operationTime } from './times/operation-time.js';

/** Of a group of like holes a rehearsal makes no more than so many: one to find out, one to confirm. */
const trials = 2;

/**
 * What it would cost to rehearse an operation alone, hours: a blank, its set-up, the cuts that come before it in the same
 * set-up, and itself, each on no more than two of its like holes. An estimate, until a test piece is worked out.
 * @param inRun the facts of the operations before it in its set-up.
 */
export const rehearsalHours = (facts: OperationFacts, inRun: readonly OperationFacts[]): number =>
  (blankMinutes(facts.part) + setUpMinutes(facts) + [...inRun, facts].reduce((sum, each) => sum + operationTime(each, trials).minutes, 0)) / 60;
