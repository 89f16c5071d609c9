import { isoMargins, type Paper } from '../paper.js';

/** ASME Y14.1 size B, 11 by 17 in, with the margins of the ISO sheets so that one layout serves all. */
export const tabloid: Paper = {
  name: 'Tabloid',
  short: 279.4,
  long: 431.8,
  orientations: ['landscape'],
  margins: isoMargins,
  lineGroup: 'bold',
};
