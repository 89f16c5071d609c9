import { UserError } from '../engine/units/user-error.js';

/** Work of which some may be impossible: what could not be made is told, in sentences, and the rest goes on. */
export interface AsFarAsCan {
  readonly leftOut: readonly string[];
  /** What the work makes; nothing where it cannot be made. Any other fault is thrown on. */
  readonly orNone: <T>(work: () => Promise<readonly T[]>) => Promise<readonly T[]>;
}

export function asFarAsCan(): AsFarAsCan {
  const leftOut: string[] = [];
  return {
    leftOut,
    orNone: async (work) => {
      try {
        return await work();
      } catch (error) {
        if (!(error instanceof UserError)) throw error;
        leftOut.push(error.message);
        return [];
      }
    },
  };
}
