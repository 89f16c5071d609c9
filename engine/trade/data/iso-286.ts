/**
 * ISO 286-1:2010 Table 1 (standard tolerances) and Tables 2 and 3 (fundamental deviations), micrometres, as printed;
 * nothing is worked out between steps. From memory; grades 5 to 11 and the usual classes to 80 mm agree with stored
 * tables, and the generating formulas of the standard are the check. Each row starts with the size (mm) up to and
 * including which it holds.
 */
export const toleranceSteps: readonly number[] = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250];

/** Standard tolerance by grade, one number for each of `toleranceSteps`. */
export const standardTolerances: Readonly<Record<number, readonly number[]>> = {
  1: [0.8, 1, 1, 1.2, 1.5, 1.5, 2, 2.5, 3.5, 4.5],
  2: [1.2, 1.5, 1.5, 2, 2.5, 2.5, 3, 4, 5, 7],
  3: [2, 2.5, 2.5, 3, 4, 4, 5, 6, 8, 10],
  4: [3, 4, 4, 5, 6, 7, 8, 10, 12, 14],
  5: [4, 5, 6, 8, 9, 11, 13, 15, 18, 20],
  6: [6, 8, 9, 11, 13, 16, 19, 22, 25, 29],
  7: [10, 12, 15, 18, 21, 25, 30, 35, 40, 46],
  8: [14, 18, 22, 27, 33, 39, 46, 54, 63, 72],
  9: [25, 30, 36, 43, 52, 62, 74, 87, 100, 115],
  10: [40, 48, 58, 70, 84, 100, 120, 140, 160, 185],
  11: [60, 75, 90, 110, 130, 160, 190, 220, 250, 290],
  12: [100, 120, 150, 180, 210, 250, 300, 350, 400, 460],
  13: [140, 180, 220, 270, 330, 390, 460, 540, 630, 720],
  14: [250, 300, 360, 430, 520, 620, 740, 870, 1000, 1150],
  15: [400, 480, 580, 700, 840, 1000, 1200, 1400, 1600, 1850],
  16: [600, 750, 900, 1100, 1300, 1600, 1900, 2200, 2500, 2900],
};

/** Sizes (mm) up to and including which each column of the fundamental deviations holds. */
export const deviationSteps: readonly number[] = [3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250];

/** Spreads one value per tolerance step over the finer deviation steps. */
const spread = (values: readonly number[]): readonly number[] =>
  deviationSteps.map((size) => values[toleranceSteps.findIndex((upTo) => size <= upTo)] ?? Number.NaN);

const none = Number.NaN;

/** Shafts above the line of zero and below: upper deviation es of a to h. */
export const upperDeviations: Readonly<Record<string, readonly number[]>> = {
  a: [-270, -270, -280, -290, -290, -300, -300, -310, -320, -340, -360, -380, -410, -460, -520, -580, -660, -740, -820],
  b: [-140, -140, -150, -150, -150, -160, -160, -170, -180, -190, -200, -220, -240, -260, -280, -310, -340, -380, -420],
  c: [-60, -70, -80, -95, -95, -110, -110, -120, -130, -140, -150, -170, -180, -200, -210, -230, -240, -260, -280],
  d: spread([-20, -30, -40, -50, -65, -80, -100, -120, -145, -170]),
  e: spread([-14, -20, -25, -32, -40, -50, -60, -72, -85, -100]),
  f: spread([-6, -10, -13, -16, -20, -25, -30, -36, -43, -50]),
  g: spread([-2, -4, -5, -6, -7, -9, -10, -12, -14, -15]),
  h: spread([0, 0, 0, 0, 0, 0, 0, 0, 0, 0]),
};

/** Lower deviation ei of shafts k to z; k holds for grades 4 to 7 and is nought for the others. */
export const lowerDeviations: Readonly<Record<string, readonly number[]>> = {
  k: spread([0, 1, 1, 1, 2, 2, 2, 3, 3, 4]),
  m: spread([2, 4, 6, 7, 8, 9, 11, 13, 15, 17]),
  n: spread([4, 8, 10, 12, 15, 17, 20, 23, 27, 31]),
  p: spread([6, 12, 15, 18, 22, 26, 32, 37, 43, 50]),
  r: [10, 15, 19, 23, 23, 28, 28, 34, 34, 41, 43, 51, 54, 63, 65, 68, 77, 80, 84],
  s: [14, 19, 23, 28, 28, 35, 35, 43, 43, 53, 59, 71, 79, 92, 100, 108, 122, 130, 140],
  t: [none, none, none, none, none, none, 41, 48, 54, 66, 75, 91, 104, 122, 134, 146, 166, 180, 196],
  u: [18, 23, 28, 33, 33, 41, 48, 60, 70, 87, 102, 124, 144, 170, 190, 210, 236, 258, 284],
  v: [none, none, none, none, 39, 47, 55, 68, 81, 102, 120, 146, 172, 202, 228, 252, 284, 310, 340],
  x: [20, 28, 34, 40, 45, 54, 64, 80, 97, 122, 146, 178, 210, 248, 280, 310, 350, 385, 425],
  y: [none, none, none, none, none, 63, 75, 94, 114, 144, 174, 214, 254, 300, 340, 380, 425, 470, 520],
  z: [26, 35, 42, 50, 60, 73, 88, 112, 136, 172, 210, 258, 310, 365, 415, 465, 520, 575, 640],
};

/** Lower deviation of shafts j, by grade, one for each of `toleranceSteps`. */
export const shaftJ: Readonly<Record<number, readonly number[]>> = {
  5: [-2, -2, -2, -3, -4, -5, -7, -9, -11, -13],
  6: [-2, -2, -2, -3, -4, -5, -7, -9, -11, -13],
  7: [-4, -4, -5, -6, -8, -10, -12, -15, -18, -21],
};

/** Upper deviation of holes J, by grade, one for each of `toleranceSteps`. */
export const holeJ: Readonly<Record<number, readonly number[]>> = {
  6: [2, 5, 5, 6, 8, 10, 13, 16, 18, 22],
  7: [4, 6, 8, 10, 12, 14, 18, 22, 26, 30],
  8: [6, 10, 12, 15, 20, 24, 28, 34, 41, 47],
};
