import { roundTo } from '../units/rounding.js';
import type { Thread, ThreadClassLimits, ThreadSeries } from './thread.js';
import { unifiedThreads } from './data/unified-threads.js';

const inch = 25.4;
const series: Readonly<Record<string, ThreadSeries>> = {
  UNC: 'unified-coarse',
  UNF: 'unified-fine',
  UNEF: 'unified-extra-fine',
  UN: 'unified-constant',
  UNS: 'unified-special',
};

/**
 * Limits of classes 2A and 2B by the formulas of ASME B1.1: tolerance of the pitch diameter of class 2A
 * 0.0015 cbrt(D) + 0.0015 sqrt(L) + 0.015 cbrt(P^2) with L = D (9 P for extra-fine and for constant pitches finer than 8 to the inch), allowance 0.3 of it, class 2B
 * 1.3 of it, tolerance of the 2A major 0.06 cbrt(P^2). Inches in, millimetres out.
 */
function classLimits(major: number, pitch: number, name: string, minor: readonly [number, number]): readonly ThreadClassLimits[] {
  const pitchDiameter = major - 0.649519 * pitch;
  const engaged = name === 'UNEF' || (name === 'UN' && pitch < 1 / 8 - 1e-9) ? 9 * pitch : major;
  const tolerance = 0.0015 * Math.cbrt(major) + 0.0015 * Math.sqrt(engaged) + 0.015 * Math.cbrt(pitch * pitch);
  const allowance = roundTo(0.3 * tolerance, 4);
  const limits = (className: string, of: ThreadClassLimits['of'], min: number, max: number): ThreadClassLimits => ({
    name: className,
    of,
    min: roundTo(min, 4) * inch,
    max: roundTo(max, 4) * inch,
  });
  return [
    limits('2B', 'minorInternal', minor[0], minor[1]),
    limits('2B', 'pitchDiameterInternal', pitchDiameter, pitchDiameter + 1.3 * tolerance),
    limits('2A', 'pitchDiameterExternal', roundTo(pitchDiameter - allowance, 4) - roundTo(tolerance, 4), pitchDiameter - allowance),
    limits('2A', 'majorExternal', major - allowance - roundTo(0.06 * Math.cbrt(pitch * pitch), 4), major - allowance),
  ];
}

/** The Unified threads: diameters by the basic profile, rounded to 0.0001 in as ASME B1.1 prints them. */
export const unified: readonly Thread[] = unifiedThreads.map(([size, major, tpi, name, minorMin, minorMax, flats]) => {
  const pitch = 1 / tpi;
  const pitchDiameter = roundTo(major - 0.649519 * pitch, 4);
  return {
    designation: `${size}-${tpi} ${name}`,
    aliases: [`${size}-${tpi}`, ...(name === 'UN' ? [] : [`${size}-${tpi} UN`])],
    series: series[name] ?? 'unified-coarse',
    major: major * inch,
    pitch: pitch * inch,
    threadsPerInch: tpi,
    pitchDiameter: pitchDiameter * inch,
    minorInternal: roundTo(major - 1.082532 * pitch, 4) * inch,
    minorExternal: roundTo(major - 1.226869 * pitch, 4) * inch,
    formAngle: 60,
    depth: 0.649519 * pitch * inch,
    stressArea: (Math.PI / 4) * (major - 0.9743 * pitch) ** 2 * inch * inch,
    classes: classLimits(major, pitch, name, [minorMin, minorMax]),
    ...(Number.isNaN(flats) ? {} : { acrossFlats: flats * inch }),
    source: `${name === 'UNS' ? 'trade custom, by the formulas of ' : ''}ASME B1.1 Table 3 (memory; class 2B minors to No. 12 read); stress area 0.7854 (D - 0.9743 P)^2; hexagon ASME B18.6.3, B18.2.2 and B18.2.1`,
  };
});
