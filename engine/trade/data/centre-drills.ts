/** Centre drills, 60 degrees, from memory: name, pilot, body (inches or mm). British numbers differ from American ones. */
export const americanCentreDrills: readonly (readonly [name: string, pilot: number, body: number, pilotLength: number])[] = [
  ['No. 00', 0.025, 1 / 8, 0.03],
  ['No. 0', 1 / 32, 1 / 8, 0.038],
  ['No. 1', 0.047, 1 / 8, 0.047],
  ['No. 2', 0.078, 3 / 16, 0.078],
  ['No. 3', 0.109, 1 / 4, 0.109],
  ['No. 4', 0.125, 5 / 16, 0.125],
  ['No. 4-1/2', 0.141, 3 / 8, 0.141],
  ['No. 5', 0.188, 7 / 16, 0.188],
  ['No. 6', 0.219, 1 / 2, 0.219],
  ['No. 7', 0.25, 5 / 8, 0.25],
  ['No. 8', 0.312, 3 / 4, 0.312],
];

/** BS 328 Part 2, inches. */
export const britishCentreDrills: readonly (readonly [name: string, pilot: number, body: number])[] = [
  ['BS1', 3 / 64, 1 / 8],
  ['BS2', 1 / 16, 3 / 16],
  ['BS3', 3 / 32, 1 / 4],
  ['BS4', 1 / 8, 5 / 16],
  ['BS5', 3 / 16, 7 / 16],
  ['BS6', 1 / 4, 5 / 8],
  ['BS7', 5 / 16, 3 / 4],
];

/** ISO 866 type A, mm: pilot, body, greatest length of the pilot (from memory). */
export const isoCentreDrills: readonly (readonly [pilot: number, body: number, pilotLength: number])[] = [
  [0.5, 3.15, 1], [0.63, 3.15, 1.2], [0.8, 3.15, 1.5], [1, 3.15, 1.9], [1.25, 3.15, 2.2], [1.6, 4, 2.8], [2, 5, 3.3], [2.5, 6.3, 4.1],
  [3.15, 8, 4.9], [4, 10, 6.2], [5, 12.5, 7.5], [6.3, 16, 9.2], [8, 20, 11.5], [10, 25, 14.2],
];

/** Hand and machine reamers commonly held: common practice, no one standard. */
export const reamerSizes = {
  in: '1/16 5/64 3/32 7/64 1/8 9/64 5/32 11/64 3/16 13/64 7/32 15/64 1/4 17/64 9/32 5/16 11/32 3/8 13/32 7/16 15/32 1/2 9/16 5/8 11/16 3/4 7/8 1',
  mm: '1 1.5 2 2.5 3 3.5 4 4.5 5 5.5 6 7 8 9 10 11 12 13 14 15 16 18 20 22 25',
} as const;
