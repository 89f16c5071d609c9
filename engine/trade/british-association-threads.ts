import { roundTo } from '../units/rounding.js';
import type { Thread } from './thread.js';

/** BS 93:1951: number, pitch, major, depth, effective, core, mm, as printed (the depth is rounded to 0.005 mm). */
const rows = [
  [0, 1, 6, 0.6, 5.4, 4.8],
  [1, 0.9, 5.3, 0.54, 4.76, 4.22],
  [2, 0.81, 4.7, 0.485, 4.215, 3.73],
  [3, 0.73, 4.1, 0.44, 3.66, 3.22],
  [4, 0.66, 3.6, 0.395, 3.205, 2.81],
  [5, 0.59, 3.2, 0.355, 2.845, 2.49],
  [6, 0.53, 2.8, 0.32, 2.48, 2.16],
  [7, 0.48, 2.5, 0.29, 2.21, 1.92],
  [8, 0.43, 2.2, 0.26, 1.94, 1.68],
  [9, 0.39, 1.9, 0.235, 1.665, 1.43],
  [10, 0.35, 1.7, 0.21, 1.49, 1.28],
  [11, 0.31, 1.5, 0.185, 1.315, 1.13],
  [12, 0.28, 1.3, 0.17, 1.13, 0.96],
  [13, 0.25, 1.2, 0.15, 1.05, 0.9],
  [14, 0.23, 1, 0.14, 0.86, 0.72],
  [15, 0.21, 0.9, 0.125, 0.775, 0.65],
  [16, 0.19, 0.79, 0.115, 0.675, 0.56],
] as const;

export const britishAssociation: readonly Thread[] = rows.map(([number, pitch, major, depth, effective, core]) => ({
  designation: `${number} BA`,
  aliases: [`BA ${number}`],
  series: 'british-association',
  major,
  pitch,
  pitchDiameter: effective,
  minorInternal: core,
  minorExternal: core,
  formAngle: 47.5,
  depth,
  stressArea: (Math.PI / 4) * ((effective + core) / 2) ** 2,
  classes: [],
  // Full-size hexagons are 1.75 D to the nearest thousandth of an inch (BS 57); finer sizes were never listed there.
  ...(number <= 12 ? { acrossFlats: roundTo((1.75 * major) / 25.4, 3) * 25.4 } : {}),
  source: 'BS 93:1951 (table as printed, memory, even rows compared with a stored handbook page); hexagon BS 57:1951 as 1.75 D; stress area by the mean of effective and core',
}));
