import { roundTo } from '../units/rounding.js';
import type { Thread } from './thread.js';

/** ISO 1501 miniature threads below M1: diameter and pitch, mm (from memory). */
const rows = [[0.5, 0.125], [0.6, 0.15], [0.7, 0.175], [0.8, 0.2], [0.9, 0.225]] as const;

/** By the form of ISO 1501: nuts 0.48 P deep, screws 0.56 P; pitch diameter as of every 60 degree form. */
export const miniature: readonly Thread[] = rows.map(([major, pitch]) => {
  const pitchDiameter = roundTo(major - 0.64952 * pitch, 4);
  const minorExternal = roundTo(major - 1.12 * pitch, 4);
  return {
    designation: `S${major}`,
    aliases: [`S${major}x${pitch}`],
    series: 'miniature',
    major,
    pitch,
    pitchDiameter,
    minorInternal: roundTo(major - 0.96 * pitch, 4),
    minorExternal,
    formAngle: 60,
    depth: 0.56 * pitch,
    stressArea: (Math.PI / 4) * ((pitchDiameter + minorExternal) / 2) ** 2,
    classes: [],
    source: 'ISO 1501 (memory; formulas of its form); stress area by the mean of pitch and minor diameter',
  };
});
