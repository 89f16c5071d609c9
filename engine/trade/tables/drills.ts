import { drills, findDrill, type Drill } from '../drills.js';
import type { Table, TableRow } from './table.js';

const drillRow = ({ name, diameter, series, source }: Drill): TableRow => ({ name, diameter, series, source });
const rows = drills.map(drillRow);

export const drillTable: Table = {
  name: 'drills',
  summary: 'twist drills by name (#53, F, 1/16 in, 2.05 mm) or series (number, letter, fraction, metric)',
  rows,
  find(filter) {
    const word = filter?.trim().toLowerCase() ?? '';
    if (word === '') return { kind: 'rows', rows };
    const ofSeries = rows.filter((row) => row['series'] === word.replace(/s$/, ''));
    return ofSeries.length > 0 ? { kind: 'rows', rows: ofSeries } : { kind: 'row', row: drillRow(findDrill(filter ?? '')) };
  },
};
