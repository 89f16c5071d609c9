/** How far a size may be off. Lengths mm; deviations are signed, upper >= lower. */
export type Tolerance =
  | { readonly kind: 'plus-minus'; readonly value: number }
  | { readonly kind: 'deviations'; readonly upper: number; readonly lower: number }
  /** A tolerance class of ISO 286 with its deviations at this size: a capital letter for a hole, a small one for a shaft. */
  | { readonly kind: 'fit'; readonly class: string; readonly upper: number; readonly lower: number }
  | { readonly kind: 'maximum' }
  | { readonly kind: 'minimum' };

/** A size as a cut carries it, mm. */
export interface Sized {
  readonly value: number;
  readonly tolerance?: Tolerance;
  /**
   * Why it matters: `functional` (another part or the work depends on it), `size` (of one feature), `location` (from a datum),
   * `overall`. Functional sizes come first on the print.
   */
  readonly purpose: 'functional' | 'size' | 'location' | 'overall';
}
