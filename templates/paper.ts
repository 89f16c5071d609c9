import type { LineGroup } from './line-styles.js';

export type Orientation = 'portrait' | 'landscape';

/** A size of paper and how a sheet of it is laid out; mm. */
export interface Paper {
  readonly name: string;
  /** Shorter and longer side of the trimmed sheet. */
  readonly short: number;
  readonly long: number;
  /** How a sheet may be turned, the usual way first. */
  readonly orientations: readonly Orientation[];
  /** From the sheet's edge to the middle of the frame line; the left one leaves room for filing. */
  readonly margins: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly lineGroup: LineGroup;
}

/** Margins in the manner of ISO 5457 (20 and 10 read in a textbook table; the clause from memory). */
export const isoMargins = { left: 20, right: 10, top: 10, bottom: 10 } as const;

/** Nothing is drawn nearer to the sheet's edge than this, mm: most printers can't reach further out. */
export const printerMargin = 5;
