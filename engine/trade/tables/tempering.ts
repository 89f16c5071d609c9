import { hardeningTemperatures, heatColours, temperingColours } from '../data/heat.js';
import { listTable, type TableRow } from './table.js';

const heatRows = (kind: string, rows: typeof temperingColours): readonly TableRow[] =>
  rows.map(([name, low, high, use, source]) => ({ name, kind, lowCelsius: low, highCelsius: high, ...(use === '' ? {} : { use }), source }));

export const temperingTable = listTable('tempering', 'tempering colours, hardening temperatures and heat colours, degrees Celsius', [
  ...heatRows('tempering', temperingColours),
  ...heatRows('hardening', hardeningTemperatures),
  ...heatRows('heat colour', heatColours),
]);
