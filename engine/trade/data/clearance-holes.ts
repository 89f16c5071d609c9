/** ASME B18.2.8 drills for close, normal and loose clearance, by screw diameter in inches; normal drills read, others memory. */
export const inchClearance: readonly (readonly [major: number, close: string, normal: string, loose: string])[] = [
  [0.06, '#51', '#48', '3/32'],
  [0.073, '#46', '#43', '#37'],
  [0.086, '3/32', '#38', '#32'],
  [0.099, '#36', '#32', '#30'],
  [0.112, '#31', '#30', '#27'],
  [0.125, '9/64', '5/32', '11/64'],
  [0.138, '#23', '#18', '#13'],
  [0.164, '#15', '#9', '#3'],
  [0.19, '#5', '#2', 'B'],
  [0.25, '17/64', '9/32', '19/64'],
  [0.3125, '21/64', '11/32', '23/64'],
  [0.375, '25/64', '13/32', '27/64'],
  [0.4375, '29/64', '15/32', '31/64'],
  [0.5, '17/32', '9/16', '39/64'],
];

/** ISO 273 holes, mm: fine (close), medium (normal), coarse (loose); read to M7 in a stored table of BS 4186, others memory. */
export const metricClearance: readonly (readonly [major: number, close: number, normal: number, loose: number])[] = [
  [1, 1.1, 1.2, 1.3],
  [1.2, 1.3, 1.4, 1.5],
  [1.4, 1.5, 1.6, 1.8],
  [1.6, 1.7, 1.8, 2],
  [1.8, 2, 2.1, 2.2],
  [2, 2.2, 2.4, 2.6],
  [2.5, 2.7, 2.9, 3.1],
  [3, 3.2, 3.4, 3.6],
  [3.5, 3.7, 3.9, 4.2],
  [4, 4.3, 4.5, 4.8],
  [4.5, 4.8, 5, 5.3],
  [5, 5.3, 5.5, 5.8],
  [6, 6.4, 6.6, 7],
  [7, 7.4, 7.6, 8],
  [8, 8.4, 9, 10],
  [10, 10.5, 11, 12],
  [12, 13, 13.5, 14.5],
];
