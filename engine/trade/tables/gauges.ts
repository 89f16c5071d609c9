import { railwayGauges, wheelStandards } from '../data/railways.js';
import { listTable, type TableRow } from './table.js';

const inch = (value: number): number => Number((value * 25.4).toFixed(4));
const standardGauge = 56.5;

const gaugeRows: readonly TableRow[] = railwayGauges.map(([name, gauge, scale, ratio, source]) => ({
  name,
  kind: 'gauge',
  gauge: gauge === 1.772 ? 45 : gauge === 1.26 ? 32 : inch(gauge),
  gaugeInches: gauge,
  scaleToTheFoot: scale,
  ratio,
  ratioOfStandardGauge: Number((standardGauge / gauge).toFixed(2)),
  source,
}));

const wheelRows: readonly TableRow[] = wheelStandards.map(([gauge, tyre, flange, depth, backToBack, wheelGauge, check, note]) => ({
  name: `${gauge} in wheels`,
  kind: 'wheels',
  gauge: inch(gauge),
  tyreWidthMin: inch(tyre),
  flangeWidthMax: inch(flange),
  flangeDepthMax: inch(depth),
  backToBack: inch(backToBack),
  wheelGauge: inch(wheelGauge),
  wheelCheck: inch(check),
  ...(note === '' ? {} : { note }),
  source: 'live-steam wheel standard, as printed on one page (read)',
}));

export const gaugeTable = listTable('gauges', 'gauges and scales of working miniature railways, and their wheels', [...gaugeRows, ...wheelRows]);
