import { isoMargins, type Paper } from '../paper.js';

/** ISO 216 A4. */
export const a4: Paper = {
  name: 'A4',
  short: 210,
  long: 297,
  orientations: ['portrait', 'landscape'],
  margins: isoMargins,
  lineGroup: 'fine',
};
