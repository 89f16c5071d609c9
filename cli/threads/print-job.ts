import type { Part } from '../../engine/part/part.js';
import type { MadePrint } from '../../engine/sheet/make-print.js';
import type { Making, Shown } from '../../engine/sheet/print-ground.js';
import type { PrintWishes } from '../../engine/sheet/print-wishes.js';

/** What both threads print from. */
export interface PrintJob {
  readonly right: Part;
  readonly wishes: PrintWishes;
}

/** What the second thread is told: the job, of which it works out what is to be seen; then, if it is wanted, to draw the print of the left hand. */
export type PrintOrder = { readonly kind: 'show'; readonly job: PrintJob } | { readonly kind: 'left'; readonly making: Making };

/** What it answers to the one and to the other. */
export type PrintAnswer = { readonly kind: 'shown'; readonly shown: Shown } | { readonly kind: 'left'; readonly print: MadePrint };
