import { nearestClause } from '../units/nearest-name.js';
import { parseLength } from '../units/length.js';
import { roundTo } from '../units/rounding.js';
import { UserError } from '../units/user-error.js';
import { letterDrills, numberDrills } from './data/number-drills.js';

export type DrillSeries = 'number' | 'letter' | 'fraction' | 'metric';

/** A twist drill; `diameter` in mm. */
export interface Drill {
  readonly name: string;
  readonly diameter: number;
  readonly series: DrillSeries;
  readonly source: string;
}

const gaugeSource = 'ANSI B94.11M (memory), agrees with the definitions of the units program';

function fractionName(sixtyFourths: number): string {
  const [whole, rest] = [Math.floor(sixtyFourths / 64), sixtyFourths % 64];
  const divisor = [32, 16, 8, 4, 2].find((candidate) => rest % candidate === 0) ?? 1;
  return `${[...(whole > 0 ? [whole] : []), ...(rest > 0 ? [`${rest / divisor}/${64 / divisor}`] : [])].join('-')} in`;
}

/** Inch sizes by 64ths, with taper shanks over 1 in (ASME B94.11M): to 1-3/4 in all of them, to 2-1/4 in every other one. */
const sixtyFourths: readonly number[] = [...Array.from({ length: 112 }, (_, index) => index + 1), ...Array.from({ length: 16 }, (_, index) => 114 + 2 * index)];

/** Metric sizes, in hundredths of a millimetre, as BS 328 steps them; over 25 mm as ISO 235 does for taper shanks. */
function metricHundredths(): readonly number[] {
  const sizes: number[] = [];
  for (let tenth = 20; tenth < 100; tenth += 10) for (const step of [0, 2, 5, 8]) sizes.push(tenth + step);
  for (let size = 100; size < 300; size += 5) sizes.push(size);
  for (let size = 300; size < 1400; size += 10) sizes.push(size);
  for (let size = 1400; size < 3200; size += 25) sizes.push(size);
  for (let size = 3200; size < 5100; size += 50) sizes.push(size);
  for (let size = 5100; size <= 6400; size += 100) sizes.push(size);
  return sizes;
}

export const drills: readonly Drill[] = [
  ...numberDrills.map((inches, index): Drill => ({ name: `#${index + 1}`, diameter: roundTo(inches * 25.4, 5), series: 'number', source: gaugeSource })),
  ...letterDrills.map((inches, index): Drill => ({ name: String.fromCharCode(65 + index), diameter: roundTo(inches * 25.4, 5), series: 'letter', source: gaugeSource })),
  ...sixtyFourths.map((size): Drill => ({ name: fractionName(size), diameter: (size * 25.4) / 64, series: 'fraction', source: 'fractions of an inch by 64ths: exact' })),
  ...metricHundredths().map((size): Drill => ({ name: `${size / 100} mm`, diameter: size / 100, series: 'metric', source: 'BS 328 steps: 0.2 to 0.98 by .00 .02 .05 .08, to 2.95 by 0.05, to 13.9 by 0.1, to 31.75 by 0.25; ISO 235: to 50.5 by 0.5, to 64 by 1 mm (memory)' })),
];

const drillNames = new Map(drills.map((drill) => [drill.name, drill]));

/**
 * The drill of that name: "#53", "No. 53", "F", "1/16 in", "1/16", "2.05 mm". A number alone is refused, for 5 may be #5 or
 * 5 mm; a fraction alone is inches.
 * @throws UserError for a name that is no drill of the tables.
 */
export function findDrill(name: string): Drill {
  const text = name.trim();
  const number = /^(?:#|no\.?|number)\s*(\d{1,2})$/i.exec(text)?.[1];
  const known = number === undefined ? (drillNames.get(text.toUpperCase().replace(/^LETTER\s*/, '')) ?? drillNames.get(text.toLowerCase())) : drillNames.get(`#${Number(number)}`);
  if (known !== undefined) return known;
  if (/^\d*\.?\d+$/.test(text)) throw new UserError(`drill "${text}" has no unit: write ${text} mm or ${text} in${/^\d{1,2}$/.test(text) ? `, or #${text} for the number drill` : ''}.`);
  if (/^(?:\d+[ -])?\d+\/\d+|\d\s*(?:in|mm|")/i.test(text)) {
    const diameter = parseLength(text, { unit: 'in', what: 'drill' });
    const same = drills.find((drill) => drill.series !== 'number' && drill.series !== 'letter' && Math.abs(drill.diameter - diameter) < 1e-6);
    if (same !== undefined) return same;
    throw new UserError(`drill "${text}" is not in the tables; the nearest is ${nearestDrill(diameter).name}.`);
  }
  throw new UserError(`drill "${text}" is not in the tables: allowed are #1 to #80, A to Z, fractions by 64ths to 1-3/4 in, by 32nds to 2-1/4 in, and metric sizes 0.2 to 64 mm${number === undefined ? nearestClause(text, drills.map((drill) => drill.name)) : `; the nearest is ${Number(number) > 80 ? '#80' : '#1'}`}.`);
}

export interface DrillChoice {
  readonly series?: DrillSeries | readonly DrillSeries[];
  /** Least and greatest diameter allowed, mm. */
  readonly atLeast?: number;
  readonly atMost?: number;
  /** Choose from these instead of from every drill of the tables. */
  readonly from?: readonly Drill[];
}

/**
 * The drill nearest to `diameter` (mm); the first in the order number, letter, fraction, metric where two are as near.
 * @throws UserError where no drill is allowed by the choice.
 */
export function nearestDrill(diameter: number, choice: DrillChoice = {}): Drill {
  const wanted = choice.series === undefined ? undefined : [choice.series].flat();
  const slack = 1e-9;
  let best: Drill | undefined;
  for (const drill of choice.from ?? drills) {
    if (wanted !== undefined && !wanted.includes(drill.series)) continue;
    if (drill.diameter < (choice.atLeast ?? 0) - slack || drill.diameter > (choice.atMost ?? Infinity) + slack) continue;
    if (best === undefined || Math.abs(drill.diameter - diameter) < Math.abs(best.diameter - diameter) - slack) best = drill;
  }
  if (best === undefined) throw new UserError(`no drill lies within the limits asked for near ${+diameter.toFixed(4)} mm; the tables run from 0.2 to 64 mm.`);
  return best;
}
