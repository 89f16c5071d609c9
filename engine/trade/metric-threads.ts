import { roundTo } from '../units/rounding.js';
import type { Thread } from './thread.js';
import { metricFlats, metricPitches, nutMinorTolerance } from './data/metric-threads.js';

/** A metric thread by the basic profile (ISO 68-1, ISO 724), rounded to 0.001 mm as ISO 724 prints it. */
function metricThread(major: number, pitch: number, coarse: boolean): Thread {
  const pitchDiameter = roundTo(major - 0.6495191 * pitch, 3);
  const minorInternal = roundTo(major - 1.0825318 * pitch, 3);
  const minorExternal = roundTo(major - 1.2268694 * pitch, 3);
  const [className, tolerance] = nutMinorTolerance[String(pitch)] ?? ['', 0];
  const flats = metricFlats[String(major)];
  return {
    designation: `M${major}x${pitch}`,
    aliases: coarse ? [`M${major}`] : [],
    series: coarse ? 'metric-coarse' : 'metric-fine',
    major,
    pitch,
    pitchDiameter,
    minorInternal,
    minorExternal,
    formAngle: 60,
    depth: 0.6134347 * pitch,
    stressArea: (Math.PI / 4) * ((pitchDiameter + minorExternal) / 2) ** 2,
    classes: [{ name: className, of: 'minorInternal', min: minorInternal, max: roundTo(minorInternal + tolerance / 1000, 3) }],
    ...(flats === undefined ? {} : { acrossFlats: flats }),
    source: 'ISO 261, ISO 724 (profile formulas), ISO 965-1 (class limits, memory), ISO 898-1 (stress area); hexagon ISO 4032 and ISO 272 (memory)',
  };
}

export const metric: readonly Thread[] = metricPitches.flatMap(([major, ...pitches]) =>
  pitches.flatMap((pitch, index) => (Number.isNaN(pitch) ? [] : [metricThread(major, pitch, index === 0)])),
);
