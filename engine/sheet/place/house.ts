import { arrow } from '../../../templates/arrow.js';
import { letterHeights } from '../../../templates/lettering.js';

/** Measures of the house for placing, paper mm (drawing rules D8, D10, D16, D26; where standards differ, our pick). */
export const house = {
  /** Outline to the first dimension line, and from one to the next. */
  first: 10,
  pitch: 8,
  /** From one dimension line to the next where the other unit stands under each. */
  pitchOfTwo: 12,
  /** Outline to the beginning of an extension line; extension line beyond the dimension line. */
  gap: 1,
  overrun: 2.5,
  /** Dimension line to the base line of its text: brackets reach below it, and must clear half an arrow. */
  textGap: 1.4,
  /** End of the extension lines to a text that stands beyond them: it must clear the arrows of the next tier. */
  liftGap: 1,
  /** Clear space round a text. */
  textClear: 0.6,
  height: letterHeights.dimension,
  linePitch: letterHeights.dimension * 1.5,
  arrow: arrow.length,
  arrowWidth: arrow.width,
  shoulder: 4,
  /** Centre lines beyond the feature. */
  centreOverrun: 2.5,
  /** Between the envelopes of two views. */
  betweenViews: 10,
} as const;
