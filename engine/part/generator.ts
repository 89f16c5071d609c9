import type { Parameters, Values } from './parameters.js';
import type { Loads } from './loads.js';
import type { Part } from './part.js';
import type { Relation } from './relation.js';

/**
 * A part as a module describes it: its parameters, what must hold between them, and how stock and cuts follow from their
 * values. `build` is pure: the same values give the same part.
 */
export interface PartGenerator<P extends Parameters = Parameters> {
  /** One word or words joined by hyphens; the name on the command line. */
  readonly name: string;
  readonly title: string;
  /** One sentence for the list. */
  readonly summary: string;
  readonly parameters: P;
  /** What must hold; judged before the part is built. */
  readonly relations: (values: Values<P>) => readonly Relation[];
  /** The right-hand part (or the only one). */
  readonly build: (values: Values<P>) => Part;
  /** What loads it, where that is known: looked at when it is made another size. */
  readonly loads?: Loads<Values<P>>;
}

/** Declares a part; the default export of a part's module. */
export const definePart = <const P extends Parameters>(generator: PartGenerator<P>): PartGenerator<P> => generator;
