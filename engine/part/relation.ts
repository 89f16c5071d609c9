/** One side of a relation: what it is, in words, and its value (mm, degrees or a count). */
export interface Side {
  readonly text: string;
  readonly value: number;
}

/** What must hold between parameters, with the reason a machinist gives. */
export interface Relation {
  readonly says: string;
  readonly left: Side;
  readonly is: '<' | '<=' | '=' | '>=' | '>';
  readonly right: Side;
  readonly measure: 'length' | 'angle' | 'count';
}

/** True when the relation holds; equal means within a tenth of a micrometre. */
export function holds(relation: Relation): boolean {
  const difference = relation.left.value - relation.right.value;
  const equal = Math.abs(difference) <= 1e-4;
  switch (relation.is) {
    case '<':
      return difference < 0 && !equal;
    case '<=':
      return difference <= 0 || equal;
    case '=':
      return equal;
    case '>=':
      return difference >= 0 || equal;
    case '>':
      return difference > 0 && !equal;
  }
}
