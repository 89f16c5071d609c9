import { isoMargins, type Paper } from '../paper.js';

/** ISO 216 A3. */
export const a3: Paper = {
  name: 'A3',
  short: 297,
  long: 420,
  orientations: ['landscape'],
  margins: isoMargins,
  lineGroup: 'bold',
};
