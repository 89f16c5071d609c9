import { parseLength } from '../../units/length.js';
import { americanCentreDrills, britishCentreDrills, isoCentreDrills, reamerSizes } from '../data/centre-drills.js';
import { listTable, type TableRow } from './table.js';

const inch = (value: number): number => Number((value * 25.4).toFixed(4));

const centreRows: readonly TableRow[] = [
  ...americanCentreDrills.map(([name, pilot, body, pilotLength]) => ({ name, pilot: inch(pilot), body: inch(body), pilotLength: inch(pilotLength), angle: 60, source: 'ASME B94.11M plain type (memory)' })),
  ...britishCentreDrills.map(([name, pilot, body]) => ({ name, pilot: inch(pilot), body: inch(body), angle: 60, source: 'BS 328 Part 2 (memory); the numbers differ from American ones' })),
  ...isoCentreDrills.map(([pilot, body, pilotLength]) => ({ name: `A ${pilot} mm`, pilot, body, pilotLength, angle: 60, source: 'ISO 866 type A (memory)' })),
];

const reamerRows: readonly TableRow[] = (['in', 'mm'] as const).flatMap((unit) =>
  reamerSizes[unit].split(' ').map((text) => ({ name: `${text} ${unit}`, diameter: parseLength(text, { unit }), source: 'sizes commonly held; common practice, H7 unless stamped otherwise' })),
);

export const centreDrillTable = listTable('centre-drills', 'centre drills: pilot and body', centreRows);
export const reamerTable = listTable('reamers', 'reamers commonly held', reamerRows);
