import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';

/** Something that stands on a sheet as one: views that keep line with each other, a section, a table, notes. Own coordinates. */
export interface Block {
  readonly id: string;
  readonly items: readonly Item[];
  readonly box: PaperBox;
  /** The boxes that it really fills, where they leave corners of `box` free. */
  readonly fills?: readonly PaperBox[];
}

export const widthOf = (box: PaperBox): number => box.right - box.left;
export const heightOf = (box: PaperBox): number => box.top - box.bottom;
