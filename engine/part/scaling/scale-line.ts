import type { Parameter } from '../parameters.js';

/** A value of a parameter in a report: its size (mm, degrees, a count), and its name where it is a thing of the trade or a word. */
export interface Amount {
  readonly size?: number;
  readonly name?: string;
}

/** What became of one parameter, and why. Lengths mm. */
export interface ScaleLine {
  readonly parameter: string;
  readonly label: string;
  readonly kind: Parameter['kind'];
  readonly measure: 'length' | 'angle' | 'count' | 'word';
  readonly before: Amount;
  /** Exactly scaled; the value before where the kind does not scale at all. */
  readonly exact: Amount;
  readonly chosen: Amount;
  /** Name of the rule. */
  readonly rule: string;
  readonly because: string;
  readonly source: string;
  /** Chosen less exact: mm, degrees or a count, and per cent of the exact one. */
  readonly deviation: number;
  readonly percent: number;
  /** Where it was put to a size of a list: half the step of the list there, which the deviation does not exceed. */
  readonly half?: number;
  /** What changes with it, in words. */
  readonly knockOn: readonly string[];
  /** Set where a relation moved it from what its rule said: which ones, in words. */
  readonly mended?: readonly string[];
  /** What a person must decide. */
  readonly decision?: string;
  /** The pair that shares it. */
  readonly mate?: string;
  /** Set where the user fixed it. */
  readonly fixed?: true;
}
