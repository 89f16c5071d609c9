/**
 * Heads of machine screws. Inch rows in inches, metric in mm. American heads: ASME B18.6.3 and B18.3; metric: ISO 2009 and
 * 7046, 10642, 1207, 4017, 4762. Countersunk inch heads and heights of the 2013 edition read in a stored handbook table,
 * all others from memory. B18.6.3 of 1972 lists the larger sharp (theoretical) diameter, of 2013 the real edge.
 */
type InchCountersunk = readonly [screw: string, major: number, sharp1972: number, max2013: number, min2013: number, height: number];

/** 82 degrees (80 to 82 by the standard; the heights follow 80). */
export const countersunkInch: readonly InchCountersunk[] = [
  ['No. 0', 0.06, 0.119, 0.112, 0.096, 0.035],
  ['No. 1', 0.073, 0.146, 0.137, 0.12, 0.043],
  ['No. 2', 0.086, 0.172, 0.162, 0.144, 0.051],
  ['No. 3', 0.099, 0.199, 0.187, 0.167, 0.059],
  ['No. 4', 0.112, 0.225, 0.212, 0.191, 0.067],
  ['No. 5', 0.125, 0.252, 0.237, 0.215, 0.075],
  ['No. 6', 0.138, 0.279, 0.262, 0.238, 0.083],
  ['No. 8', 0.164, 0.332, 0.312, 0.285, 0.1],
  ['No. 10', 0.19, 0.385, 0.362, 0.333, 0.116],
  ['No. 12', 0.216, 0.438, 0.412, 0.38, 0.132],
  ['1/4', 0.25, 0.507, 0.477, 0.442, 0.153],
  ['5/16', 0.3125, 0.635, 0.597, 0.556, 0.191],
  ['3/8', 0.375, 0.762, 0.717, 0.67, 0.23],
  ['7/16', 0.4375, 0.812, 0.76, 0.715, 0.223],
  ['1/2', 0.5, 0.875, 0.815, 0.765, 0.223],
];

type MetricCountersunk = readonly [screw: string, theoretical: number, max: number, min: number, height: number];

/** ISO 2009 and 7046, 90 degrees. */
export const countersunkMetric: readonly MetricCountersunk[] = [
  ['M1.6', 3.6, 3, 2.7, 1],
  ['M2', 4.4, 3.8, 3.5, 1.2],
  ['M2.5', 5.5, 4.7, 4.4, 1.5],
  ['M3', 6.3, 5.5, 5.2, 1.65],
  ['M3.5', 8.2, 7.3, 6.94, 2.35],
  ['M4', 9.4, 8.4, 8.04, 2.7],
  ['M5', 10.4, 9.3, 8.94, 2.7],
  ['M6', 12.6, 11.3, 10.87, 3.3],
  ['M8', 17.3, 15.8, 15.37, 4.65],
  ['M10', 20, 18.3, 17.78, 5],
];

/** ISO 10642 socket heads, 90 degrees: theoretical and least diameter, height. */
export const socketCountersunkMetric: readonly (readonly [screw: string, theoretical: number, min: number, height: number])[] = [
  ['M3', 6.72, 5.54, 1.86],
  ['M4', 8.96, 7.53, 2.48],
  ['M5', 11.2, 9.43, 3.1],
  ['M6', 13.44, 11.34, 3.72],
  ['M8', 17.92, 15.24, 4.96],
  ['M10', 22.4, 19.22, 6.2],
  ['M12', 26.88, 23.12, 7.44],
];

type Head = readonly [screw: string, across: number, height: number, key?: number];

/** ISO 1207 cheese heads: diameter, height. */
export const cheeseMetric: readonly Head[] = [
  ['M1.6', 3, 1.1], ['M2', 3.8, 1.4], ['M2.5', 4.5, 1.8], ['M3', 5.5, 2], ['M3.5', 6, 2.4], ['M4', 7, 2.6], ['M5', 8.5, 3.3], ['M6', 10, 3.9], ['M8', 13, 5], ['M10', 16, 6],
];

/** ASME B18.6.3 fillister heads: diameter, height of the side. */
export const fillisterInch: readonly Head[] = [
  ['No. 0', 0.096, 0.045], ['No. 1', 0.118, 0.053], ['No. 2', 0.14, 0.062], ['No. 3', 0.161, 0.07], ['No. 4', 0.183, 0.079], ['No. 5', 0.205, 0.088], ['No. 6', 0.226, 0.096],
  ['No. 8', 0.27, 0.113], ['No. 10', 0.313, 0.13], ['No. 12', 0.357, 0.148], ['1/4', 0.414, 0.17], ['5/16', 0.518, 0.211], ['3/8', 0.622, 0.253],
];

/** ISO 4017 hexagon heads: across flats, height. */
export const hexagonMetric: readonly Head[] = [
  ['M1.6', 3.2, 1.1], ['M2', 4, 1.4], ['M2.5', 5, 1.7], ['M3', 5.5, 2], ['M3.5', 6, 2.4], ['M4', 7, 2.8], ['M5', 8, 3.5], ['M6', 10, 4], ['M8', 13, 5.3], ['M10', 16, 6.4], ['M12', 18, 7.5],
];

/** Socket cap heads: diameter, height, key (ISO 4762, ASME B18.3). */
export const capMetric: readonly Head[] = [
  ['M1.6', 3, 1.6, 1.5], ['M2', 3.8, 2, 1.5], ['M2.5', 4.5, 2.5, 2], ['M3', 5.5, 3, 2.5], ['M4', 7, 4, 3], ['M5', 8.5, 5, 4], ['M6', 10, 6, 5], ['M8', 13, 8, 6], ['M10', 16, 10, 8], ['M12', 18, 12, 10],
];
export const capInch: readonly Head[] = [
  ['No. 0', 0.096, 0.06, 0.05], ['No. 1', 0.118, 0.073, 1 / 16], ['No. 2', 0.14, 0.086, 5 / 64], ['No. 3', 0.161, 0.099, 5 / 64], ['No. 4', 0.183, 0.112, 3 / 32], ['No. 5', 0.205, 0.125, 3 / 32],
  ['No. 6', 0.226, 0.138, 7 / 64], ['No. 8', 0.27, 0.164, 9 / 64], ['No. 10', 0.312, 0.19, 5 / 32], ['1/4', 0.375, 0.25, 3 / 16], ['5/16', 0.469, 0.3125, 1 / 4], ['3/8', 0.562, 0.375, 5 / 16], ['1/2', 0.75, 0.5, 3 / 8],
];
