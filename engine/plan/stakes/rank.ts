import type { Stake } from './stake.js';

/** The stakes, most hours at stake first; of equal ones the earlier operation first. */
export const rankedStakes = (stakes: readonly Stake[]): readonly Stake[] => [...stakes].sort((a, b) => b.atStake - a.atStake || a.operation - b.operation);

/** The numbers of the operations that are worth a rehearsal, most at stake first. */
export const worthRehearsing = (stakes: readonly Stake[]): readonly number[] => rankedStakes(stakes.filter((stake) => stake.worthRehearsing)).map(({ operation }) => operation);
