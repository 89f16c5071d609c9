import type { Part } from '../engine/part/part.js';
import type { Making, Shown } from '../engine/sheet/print-ground.js';
import type { PrintWishes } from '../engine/sheet/print-wishes.js';
import type { Format, PrintedHand } from './print-files.js';

/** What both threads print from. */
export interface PrintJob {
  readonly right: Part;
  readonly wishes: PrintWishes;
  readonly formats: readonly Format[];
}

/** What the helper is told: the job, for which it works out what is to be seen; then, if it is wanted, to print the left hand. */
export type Order = { readonly kind: 'take'; readonly job: PrintJob } | { readonly kind: 'left'; readonly making: Making };

/** What the helper answers. A mistake is the sentence of a UserError, whose class does not pass from thread to thread. */
export type Answer =
  | { readonly kind: 'shown'; readonly shown: Shown }
  | { readonly kind: 'left'; readonly print: PrintedHand }
  | { readonly kind: 'mistake'; readonly sentence: string };
