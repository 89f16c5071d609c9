/**
 * ISO metric threads M1 to M52 (ISO 261; over M22 those of the first two choices): diameter, pitches with the coarse one first, mm. From memory of the standard.
 */
export const metricPitches = [
  [1, 0.25, 0.2],
  [1.1, 0.25, 0.2],
  [1.2, 0.25, 0.2],
  [1.4, 0.3, 0.2],
  [1.6, 0.35, 0.2],
  [1.8, 0.35, 0.2],
  [2, 0.4, 0.25],
  [2.2, 0.45, 0.25],
  [2.5, 0.45, 0.35],
  [3, 0.5, 0.35],
  [3.5, 0.6, 0.35],
  [4, 0.7, 0.5],
  [4.5, 0.75, 0.5],
  [5, 0.8, 0.5],
  [5.5, Number.NaN, 0.5],
  [6, 1, 0.75],
  [7, 1, 0.75],
  [8, 1.25, 1, 0.75],
  [9, 1.25, 1, 0.75],
  [10, 1.5, 1.25, 1, 0.75],
  [11, 1.5, 1, 0.75],
  [12, 1.75, 1.5, 1.25, 1],
  [14, 2, 1.5, 1],
  [16, 2, 1.5, 1],
  [18, 2.5, 1.5, 1],
  [20, 2.5, 1.5, 1],
  [22, 2.5, 1.5, 1],
  [24, 3, 2, 1.5, 1],
  [27, 3, 2, 1.5, 1],
  [30, 3.5, 3, 2, 1.5, 1],
  [33, 3.5, 3, 2, 1.5],
  [36, 4, 3, 2, 1.5],
  [39, 4, 3, 2, 1.5],
  [42, 4.5, 4, 3, 2, 1.5],
  [45, 4.5, 4, 3, 2, 1.5],
  [48, 5, 4, 3, 2, 1.5],
  [52, 5, 4, 3, 2, 1.5],
] as const;

/**
 * Tolerance of the nut's minor diameter by pitch, micrometres (ISO 965-1 Table 3, from memory): class 6H, and 5H for the
 * two finest pitches, for which the standard has no class 6H.
 */
export const nutMinorTolerance: Readonly<Record<string, readonly [className: string, tolerance: number]>> = {
  '0.2': ['5H', 48],
  '0.25': ['5H', 56],
  '0.3': ['6H', 85],
  '0.35': ['6H', 100],
  '0.4': ['6H', 112],
  '0.45': ['6H', 125],
  '0.5': ['6H', 140],
  '0.6': ['6H', 160],
  '0.7': ['6H', 180],
  '0.75': ['6H', 190],
  '0.8': ['6H', 200],
  '1': ['6H', 236],
  '1.25': ['6H', 265],
  '1.5': ['6H', 300],
  '1.75': ['6H', 335],
  '2': ['6H', 375],
  '2.5': ['6H', 450],
  '3': ['6H', 500],
  '3.5': ['6H', 560],
  '4': ['6H', 600],
  '4.5': ['6H', 670],
  '5': ['6H', 710],
};

/**
 * Tolerances of ISO 965-1 by pitch, micrometres, from memory: of the screw's major diameter (grade 6), and the allowance of
 * position g (15 + 11 P, rounded as printed).
 */
export const screwMajorTolerance: Readonly<Record<string, readonly [tolerance: number, allowance: number]>> = {
  '0.2': [56, 17], '0.25': [67, 18], '0.3': [75, 18], '0.35': [85, 19], '0.4': [95, 19], '0.45': [100, 20], '0.5': [106, 20], '0.6': [125, 21],
  '0.7': [140, 22], '0.75': [140, 22], '0.8': [150, 24], '1': [180, 26], '1.25': [212, 28], '1.5': [236, 32], '1.75': [265, 34],
  '2': [280, 38], '2.5': [335, 42], '3': [375, 48], '3.5': [425, 53], '4': [475, 60], '4.5': [500, 63], '5': [530, 71],
};

/**
 * Tolerances of the pitch diameter, grade 6, micrometres, from memory: greatest diameter of the range (mm), then by pitch
 * that of the screw and that of the nut (nought where the standard has none).
 */
export const pitchTolerance: readonly (readonly [upTo: number, byPitch: Readonly<Record<string, readonly [screw: number, nut: number]>>])[] = [
  [1.4, { '0.2': [48, 0], '0.25': [53, 0], '0.3': [56, 75] }],
  [2.8, { '0.2': [50, 0], '0.25': [56, 0], '0.35': [63, 85], '0.4': [67, 90], '0.45': [71, 95] }],
  [5.6, { '0.35': [67, 90], '0.5': [75, 100], '0.6': [85, 112], '0.7': [90, 118], '0.75': [90, 118], '0.8': [95, 125] }],
  [11.2, { '0.75': [100, 132], '1': [112, 150], '1.25': [118, 160], '1.5': [132, 180] }],
  [22.4, { '1': [118, 160], '1.25': [132, 180], '1.5': [140, 190], '1.75': [150, 200], '2': [160, 212], '2.5': [170, 224] }],
  [45, { '1': [125, 170], '1.5': [150, 200], '2': [170, 224], '3': [200, 265], '3.5': [212, 280], '4': [224, 300], '4.5': [236, 315] }],
  [90, { '1.5': [160, 212], '2': [180, 236], '3': [212, 280], '4': [236, 315], '5': [250, 335] }],
];

/** Across the flats of hexagon nuts and screws, mm: ISO 4032, ISO 4017, and ISO 272 for sizes between; from memory. */
export const metricFlats: Readonly<Record<string, number>> = {
  '1': 2.5, '1.2': 3, '1.4': 3, '1.6': 3.2, '2': 4, '2.5': 5, '3': 5.5, '3.5': 6, '4': 7, '5': 8, '6': 10, '7': 11, '8': 13, '10': 16, '12': 18,
  '14': 21, '16': 24, '18': 27, '20': 30, '22': 34,
  '24': 36, '27': 41, '30': 46, '33': 50, '36': 55, '39': 60, '42': 65, '45': 70, '48': 75, '52': 80,
};
