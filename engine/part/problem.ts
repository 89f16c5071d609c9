import type { LengthUnit } from '../units/length.js';
import type { Relation } from './relation.js';

/** What is wrong with the settings of a part, as a record; `problemSentence` puts it in words. */
export type Problem =
  | { readonly code: 'unknown-parameter'; readonly name: string; readonly known: readonly string[]; readonly part: string }
  /** The reader of the parameter's kind has said why in a sentence. */
  | { readonly code: 'unreadable'; readonly name: string; readonly reason: string }
  | {
      readonly code: 'beyond-limit';
      readonly name: string;
      /** As the user wrote it. */
      readonly written: string;
      readonly limit: 'least' | 'greatest';
      /** The limit in words, with its unit. */
      readonly allowed: string;
    }
  | { readonly code: 'relation-broken'; readonly relation: Relation; readonly unit: LengthUnit };
