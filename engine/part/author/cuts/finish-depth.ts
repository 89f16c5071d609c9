import type { FinishDepth, Phrase } from '../../cut.js';
import type { Sized } from '../../tolerance.js';
import { inWords } from '../phrases.js';

/** Asks that a cut be finished to its size only so far from where the cutter enters, and roughed deeper. */
export interface FinishAsked {
  readonly depth: Sized;
  /** By how much the cut may stay narrower below that, mm on the width or the diameter. */
  readonly under: number;
}

/** What a cut carries of it, for its walls; nothing where nothing is asked. Throws RangeError where it is not less than the full depth. */
export function finishOf(asked: FinishAsked | undefined, name: string, full: number | undefined, walls: readonly string[] = []): { readonly finishDepth?: FinishDepth } {
  if (asked === undefined) return {};
  if (full !== undefined && !(asked.depth.value < full)) throw new RangeError(`the ${name} is finished ${asked.depth.value} deep, and is itself ${full}`);
  return { finishDepth: { ...asked, walls } };
}

/** "to size .4 deep from the mouth; deeper up to .01 narrower will do". */
export const finishInWords = (asked: FinishAsked | undefined): Phrase =>
  asked === undefined ? [] : ['to size ', inWords(asked.depth), ' deep from the mouth; deeper up to ', { length: asked.under }, ' narrower will do'];
