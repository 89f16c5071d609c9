import { roundTo } from '../units/rounding.js';
import type { Thread, ThreadClassLimits } from './thread.js';
import { metricFlats, metricPitches, nutMinorTolerance, pitchTolerance, screwMajorTolerance } from './data/metric-threads.js';

/** Limits of classes 6H (5H at the finest pitches) and 6g, mm. */
function classLimits(major: number, pitch: number, pitchDiameter: number, minorInternal: number): readonly ThreadClassLimits[] {
  const [nutClass, minorTolerance] = nutMinorTolerance[String(pitch)] ?? ['', 0];
  const [majorTolerance, allowance] = screwMajorTolerance[String(pitch)] ?? [0, 0];
  const [screw, nut] = pitchTolerance.find(([upTo]) => major <= upTo)?.[1][String(pitch)] ?? [0, 0];
  const limits = (name: string, of: ThreadClassLimits['of'], basic: number, below: number, above: number): ThreadClassLimits => ({
    name,
    of,
    min: roundTo(basic + below / 1000, 3),
    max: roundTo(basic + above / 1000, 3),
  });
  return [
    limits(nutClass, 'minorInternal', minorInternal, 0, minorTolerance),
    ...(nut === 0 ? [] : [limits('6H', 'pitchDiameterInternal', pitchDiameter, 0, nut)]),
    limits('6g', 'pitchDiameterExternal', pitchDiameter, -allowance - screw, -allowance),
    limits('6g', 'majorExternal', major, -allowance - majorTolerance, -allowance),
  ];
}

/** A metric thread by the basic profile (ISO 68-1, ISO 724), rounded to 0.001 mm as ISO 724 prints it. */
function metricThread(major: number, pitch: number, coarse: boolean): Thread {
  const pitchDiameter = roundTo(major - 0.6495191 * pitch, 3);
  const minorInternal = roundTo(major - 1.0825318 * pitch, 3);
  const minorExternal = roundTo(major - 1.2268694 * pitch, 3);
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
    classes: classLimits(major, pitch, pitchDiameter, minorInternal),
    ...(flats === undefined ? {} : { acrossFlats: flats }),
    source: 'ISO 261, ISO 724 (profile formulas), ISO 965-1 (class limits, memory), ISO 898-1 (stress area); hexagon ISO 4032 and ISO 272 (memory)',
  };
}

export const metric: readonly Thread[] = metricPitches.flatMap(([major, ...pitches]) =>
  pitches.flatMap((pitch, index) => (Number.isNaN(pitch) ? [] : [metricThread(major, pitch, index === 0)])),
);
