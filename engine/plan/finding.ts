import type { Phrase } from '../part/cut.js';

/** How bad a finding is: what is fatal spoils the part or the hand; a warning is to be looked at; a remark is good to know. */
export type Gravity = 'fatal' | 'warning' | 'remark';

/** Something found out about an operation by working it through. The figures come first, the sentence is made of them. */
export interface Finding {
  /** Which check found it, as in "cutter reach". */
  readonly check: string;
  /** Number of the operation; of the one that suffers, where two have to do with it. */
  readonly operation: number;
  readonly gravity: Gravity;
  /** Values by name; lengths mm, angles degrees, other units in the name. */
  readonly figures: Readonly<Record<string, number | string>>;
  /** What is wrong, by how much and what would help; lengths are written in the unit of the print. */
  readonly sentence: Phrase;
  /** Where the limit comes from: a standard, a handbook, or "common practice". */
  readonly source: string;
}
