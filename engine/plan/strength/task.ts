import type { PartGenerator } from '../../part/generator.js';
import type { Parameters, Values } from '../../part/parameters.js';

/** A part at both sizes; what the user fixed is not proposed to be changed. */
export interface StrengthTask<P extends Parameters = Parameters> {
  readonly generator: PartGenerator<P>;
  readonly before: Values<P>;
  readonly after: Values<P>;
  readonly factor: number;
  readonly fixed: ReadonlySet<string>;
}
