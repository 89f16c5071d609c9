/** A linear form with small whole coefficients over named coordinates. */
export type Row = ReadonlyMap<string, bigint>;

/** A row from pairs of name and whole coefficient; equal names add up. */
export function row(...entries: readonly (readonly [string, number])[]): Row {
  const result = new Map<string, bigint>();
  for (const [name, coefficient] of entries) {
    const sum = (result.get(name) ?? 0n) + BigInt(coefficient);
    if (sum === 0n) result.delete(name);
    else result.set(name, sum);
  }
  return result;
}

/**
 * The span of rows, grown one by one with exact whole-number elimination, so that "does this size add anything" never hangs
 * on a rounded number.
 */
export class RowSpace {
  private readonly pivots = new Map<string, Row>();

  get rank(): number {
    return this.pivots.size;
  }

  /** True, and the row is kept, when it is not a combination of those kept before. */
  add(candidate: Row): boolean {
    const rest = this.reduce(candidate);
    const pivot = rest.keys().next();
    if (pivot.done === true) return false;
    this.pivots.set(pivot.value, rest);
    return true;
  }

  /** True when the row follows from those kept. */
  spans(candidate: Row): boolean {
    return this.reduce(candidate).size === 0;
  }

  private reduce(candidate: Row): Row {
    let rest = new Map(candidate);
    for (;;) {
      const name = [...rest.keys()].find((each) => this.pivots.has(each));
      if (name === undefined) return rest;
      const by = this.pivots.get(name)!;
      const mine = rest.get(name)!;
      const theirs = by.get(name)!;
      const next = new Map<string, bigint>();
      for (const key of new Set([...rest.keys(), ...by.keys()])) {
        const value = (rest.get(key) ?? 0n) * theirs - (by.get(key) ?? 0n) * mine;
        if (value !== 0n) next.set(key, value);
      }
      rest = next;
    }
  }
}
