import { parseNumber } from '../units/number.js';
import { roundTo } from '../units/rounding.js';
import type { Thread, ThreadSeries } from './thread.js';

const inch = 25.4;

/** Nominal diameter and threads per inch of each series of Whitworth form up to 2 in; from memory. */
const lists: readonly (readonly [series: ThreadSeries, suffix: string, source: string, rows: readonly (readonly [string, number])[]])[] = [
  ['whitworth', 'BSW', 'BS 84:1956 coarse', [['1/16', 60], ['3/32', 48], ['1/8', 40], ['5/32', 32], ['3/16', 24], ['7/32', 24], ['1/4', 20], ['5/16', 18], ['3/8', 16], ['7/16', 14], ['1/2', 12], ['9/16', 12], ['5/8', 11], ['3/4', 10], ['7/8', 9], ['1', 8], ['1-1/8', 7], ['1-1/4', 7], ['1-1/2', 6], ['1-3/4', 5], ['2', 4.5]]],
  ['whitworth-fine', 'BSF', 'BS 84:1956 fine', [['3/16', 32], ['7/32', 28], ['1/4', 26], ['9/32', 26], ['5/16', 22], ['3/8', 20], ['7/16', 18], ['1/2', 16], ['9/16', 16], ['5/8', 14], ['3/4', 12], ['7/8', 11], ['1', 10], ['1-1/8', 9], ['1-1/4', 9], ['1-3/8', 8], ['1-1/2', 8], ['1-3/4', 7], ['2', 7]]],
  ['brass-26', 'BSB', '26 threads per inch "brass" series, trade custom', [['1/4', 26], ['5/16', 26], ['3/8', 26], ['7/16', 26], ['1/2', 26], ['9/16', 26], ['5/8', 26], ['3/4', 26], ['7/8', 26], ['1', 26]]],
  ['model-40', 'ME', '40 threads per inch model-engineering series, trade custom without a standard', [['1/8', 40], ['5/32', 40], ['3/16', 40], ['7/32', 40], ['1/4', 40], ['9/32', 40], ['5/16', 40], ['3/8', 40], ['7/16', 40], ['1/2', 40]]],
  ['model-32', 'ME', '32 threads per inch model-engineering series, trade custom without a standard', [['5/32', 32], ['3/16', 32], ['7/32', 32], ['1/4', 32], ['9/32', 32], ['5/16', 32], ['3/8', 32], ['7/16', 32], ['1/2', 32]]],
];

/** A thread of Whitworth form (BS 84): depth 0.640327 P, diameters rounded to 0.0001 in as the standard prints them. */
function whitworthThread(series: ThreadSeries, suffix: string, source: string, size: string, tpi: number): Thread {
  const major = parseNumber(size);
  const effective = roundTo(major - 0.640327 / tpi, 4);
  const core = roundTo(major - 1.280654 / tpi, 4);
  // Published charts round either the core itself, as here, or the depth before it is taken off twice.
  const otherCore = roundTo(major - 2 * roundTo(0.640327 / tpi, 4), 4);
  const byPitch = series === 'model-32' || series === 'model-40';
  return {
    designation: byPitch ? `${size}x${tpi} ${suffix}` : `${size} ${suffix}`,
    aliases: [`${size}x${tpi}`, `${size}-${tpi} ${suffix}`, `${suffix} ${size}`, ...(byPitch ? [`${suffix} ${size}-${tpi}`] : [])],
    series,
    major: major * inch,
    pitch: inch / tpi,
    threadsPerInch: tpi,
    pitchDiameter: effective * inch,
    minorInternal: core * inch,
    minorExternal: core * inch,
    formAngle: 55,
    depth: (0.640327 * inch) / tpi,
    stressArea: (Math.PI / 4) * ((effective + core) / 2) ** 2 * inch * inch,
    classes: [],
    source: `Whitworth form of BS 84 (formulas); sizes: ${source} (memory); stress area by the mean of effective and core${otherCore === core ? '' : `; core ${core} in by the formula, tables that round the depth first print ${otherCore} in`}`,
  };
}

export const whitworthForm: readonly Thread[] = lists.flatMap(([series, suffix, source, rows]) =>
  rows.map(([size, tpi]) => whitworthThread(series, suffix, source, size, tpi)),
);
