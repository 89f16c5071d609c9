/**
 * Lengths of flutes by diameter, mm: end mills DIN 844, short and long; twist drills, jobber length, DIN 338 (all from
 * memory of the tables; between their rows the length is taken in proportion). Inch cutters of like diameter come near.
 */
export const shortEndMills: readonly (readonly [diameter: number, flute: number])[] = [
  [1, 3], [1.5, 4.5], [2, 7], [3, 8], [4, 11], [5, 13], [6, 13], [8, 19], [10, 22], [12, 26], [16, 32], [20, 38],
];

export const longEndMills: readonly (readonly [diameter: number, flute: number])[] = [
  [1, 4], [1.5, 7], [2, 10], [3, 12], [4, 19], [5, 24], [6, 24], [8, 38], [10, 45], [12, 53], [16, 63], [20, 75],
];

export const jobberDrills: readonly (readonly [diameter: number, flute: number])[] = [
  [0.3, 3], [0.5, 6], [0.8, 10], [1, 12], [1.2, 16], [1.5, 18], [2, 24], [2.5, 30], [3, 33], [3.5, 39], [4, 43], [4.5, 47], [5, 52], [6, 57], [7, 69], [8, 75], [9, 81], [10, 87], [11, 94], [12, 101], [13, 101], [16, 120], [20, 140],
];

/** An end mill deeper than so many of its diameters bends, and no usual one is so long: common practice. */
export const deepestMilling = 8;

/** A boring tool deeper than so many diameters of its hole chatters: common practice. */
export const deepestBoring = 5;

/**
 * What carries the cutter, mm across: common practice for the nut of a small collet holder, and a 10 mm drill chuck. Both
 * are taken as plain cylinders, which they are not toward the cutter: so no clearance is told that is not there.
 */
export const holderAcross = { mill: 40, drill: 36 } as const;

/** Shank to be seen between flutes and holder, mm: common practice. */
export const shankSeen = { mill: 6, drill: 4 } as const;

/** Between the rows of a table in proportion; beyond its ends as its first or last row has it. */
export function lengthIn(table: readonly (readonly [number, number])[], diameter: number): number {
  const [first, last] = [table[0]!, table.at(-1)!];
  if (diameter <= first[0]) return (first[1] * diameter) / first[0];
  if (diameter >= last[0]) return last[1];
  const i = table.findIndex(([size]) => size >= diameter);
  const [[a, fa], [b, fb]] = [table[i - 1]!, table[i]!];
  return fa + ((fb - fa) * (diameter - a)) / (b - a);
}
