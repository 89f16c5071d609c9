import type { Form } from './form.js';
import type { Size } from './size.js';
import type { Sized, Tolerance } from './tolerance.js';

export type * from './size.js';

/** What a face of a cut is for the drawing. */
export interface CutFace {
  /** Ids of the stations that this face lies on. */
  readonly stations: readonly string[];
  /** Ids of the stations where this face begins and ends without a flat face there (a taper). */
  readonly bounds?: readonly string[];
  /** Surface texture asked for: arithmetic mean roughness Ra, micrometres. */
  readonly texture?: number;
}

/** Text with lengths in it: a string stands as it is, a number with its tolerance is written in the print's unit. */
export type Phrase = readonly (string | PhraseSize)[];

export interface PhraseSize {
  readonly length: number;
  readonly tolerance?: Tolerance;
  readonly sign?: 'diameter' | 'radius';
}

/** How far a cut is finished, where that is less than its full depth: deeper it is only roughed. */
export interface FinishDepth {
  /** From where the cutter enters; so far the size and its limits hold. */
  readonly depth: Sized;
  /** By how much the cut may stay narrower below that, mm on the width or the diameter. */
  readonly under: number;
  /** Ids of the stations of its walls, whose distance is meant; none where a diameter is. */
  readonly walls: readonly string[];
}

/** One cut: what is taken away, by exact form, and every size and place that makes it. Plain data. */
export interface Cut {
  /** Unique in the part. */
  readonly id: string;
  /** What a machinist calls it, as in "cross bore". */
  readonly name: string;
  readonly forms: readonly Form[];
  readonly faces: Readonly<Record<string, CutFace>>;
  readonly sizes: readonly Size[];
  /** Stations that the cut sets, whether or not a face lies on them (hole centres). */
  readonly stations: readonly string[];
  readonly finishDepth?: FinishDepth;
  /** Set where the cut is another one made again elsewhere, whose sizes are said there: that cut's id, and which time it is. */
  readonly repeats?: { readonly cut: string; readonly trial: number };
  /** What to do, for the operation table. */
  readonly instruction: Phrase;
}
