import { stock } from '../stock.js';
import { listTable } from './table.js';

export const stockTable = listTable(
  'stock',
  'bars, sheet, tube, shim and wire gauges as sold, by form (hexagon bar, shim, swg) or size (1/4 in)',
  stock.map(({ name, form, unit, size, width, source }) => ({
    name,
    form,
    unit,
    size: Number(size.toFixed(5)),
    ...(width === undefined ? {} : { width: Number(width.toFixed(5)) }),
    source,
  })),
);
