import { screwRows } from '../screws.js';
import { listTable } from './table.js';

export const screwTable = listTable(
  'screws',
  'heads of screws and nuts, by screw (M3, No. 4, 4 BA) or kind (countersunk, cheese head, hexagon nut)',
  screwRows.map(({ name, screw, kind, sizes, source }) => ({ name, screw, kind, ...sizes, source })),
);
