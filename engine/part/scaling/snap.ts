/** A size of a list that stands for a wanted one, and how far that one may be from it: half of the step there. */
export interface Snapped<T> {
  readonly option: T;
  readonly half: number;
}

/** Sizes that are the same within this, mm. */
const SAME = 1e-6;

/**
 * The nearest of a list of sizes, the larger of two as near.
 * @param options small to large.
 * @returns undefined beyond the ends by more than half of the last step.
 */
export function nearestOf<T extends { readonly size: number }>(options: readonly T[], wanted: number): Snapped<T> | undefined {
  const above = options.findIndex(({ size }) => size >= wanted - SAME);
  const [high, low] = [above === -1 ? undefined : options[above], above === -1 ? options.at(-1) : options[above - 1]];
  if (high !== undefined && Math.abs(high.size - wanted) <= SAME) return { option: high, half: SAME };
  if (high !== undefined && low !== undefined) return { option: wanted - low.size < high.size - wanted - SAME ? low : high, half: (high.size - low.size) / 2 };
  const [end, next] = high === undefined ? [options.at(-1), options.at(-2)] : [options[0], options[1]];
  if (end === undefined || next === undefined) return undefined;
  const half = Math.abs(end.size - next.size) / 2;
  return Math.abs(end.size - wanted) <= half + SAME ? { option: end, half } : undefined;
}
