import { isoMargins, type Paper } from '../paper.js';

/** ASME Y14.1 size A, 8.5 by 11 in, with the margins of the ISO sheets so that one layout serves all. */
export const letter: Paper = {
  name: 'Letter',
  short: 215.9,
  long: 279.4,
  orientations: ['portrait', 'landscape'],
  margins: isoMargins,
  lineGroup: 'fine',
};
