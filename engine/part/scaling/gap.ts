import { holds, type Relation } from '../relation.js';

/** So much must lie between the sides of a relation that says more or less, beyond what counts as equal; mm, degrees or a count. */
const CLEAR = 2e-4;

/** By how much a relation holds (nought or more) or is short (less than nought); not a number counts as far short. */
export function gapOf({ left, right, is }: Relation): number {
  const more = left.value - right.value;
  if (!Number.isFinite(more)) return -1e9;
  switch (is) {
    case '<=':
      return -more;
    case '<':
      return -more - CLEAR;
    case '>=':
      return more;
    case '>':
      return more - CLEAR;
    case '=':
      return -Math.abs(more);
  }
}

/** The relations that do not hold, by their place in the list. */
export const brokenAmong = (relations: readonly Relation[]): readonly number[] => relations.flatMap((relation, i) => (holds(relation) ? [] : [i]));
