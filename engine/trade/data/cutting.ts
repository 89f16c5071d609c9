/**
 * Parts of the turning speed for other work with high-speed steel or carbide: workshop-text rules of thumb (memory). The
 * lower end is taken, for small machines.
 */
export const speedFactors: Readonly<Record<string, number>> = {
  turning: 1,
  boring: 0.8,
  milling: 0.9,
  reaming: 0.4,
  countersinking: 0.3,
  counterboring: 0.3,
  parting: 0.5,
  forming: 0.4,
  knurling: 0.3,
};

/**
 * Feeds, inches for each turn (milling: for each tooth), low and high, up to a diameter in inches. Drilling as two stored
 * pages agree (read); the others are workshop-text ranges (memory, no standard).
 */
export const feedRows: readonly (readonly [operation: string, upTo: number, low: number, high: number])[] = [
  ['drilling', 0.125, 0.001, 0.002],
  ['drilling', 0.25, 0.002, 0.004],
  ['drilling', 0.5, 0.004, 0.007],
  ['drilling', 1, 0.007, 0.015],
  ['drilling', Infinity, 0.015, 0.025],
  ['reaming', 0.25, 0.004, 0.008],
  ['reaming', Infinity, 0.008, 0.016],
  ['roughing', Infinity, 0.004, 0.01],
  ['finishing', Infinity, 0.002, 0.004],
  ['facing', Infinity, 0.002, 0.005],
  ['boring', Infinity, 0.001, 0.003],
  ['parting', Infinity, 0.001, 0.002],
  ['milling', 0.125, 0.0003, 0.001],
  ['milling', 0.25, 0.0005, 0.002],
  ['milling', 0.5, 0.001, 0.004],
  ['milling', Infinity, 0.002, 0.005],
];
