import type { Phrase } from '../../part/cut.js';

/** A point at which to stop before going on: to measure, or because there is no return. */
export interface Stop {
  /** Number of the operation in whose row it stands. */
  readonly operation: number;
  readonly sentence: Phrase;
}
