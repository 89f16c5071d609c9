import type { PartGenerator } from '../engine/part/generator.js';
import type { Parameters, Values } from '../engine/part/parameters.js';

/** A part with the values of its parameters, ready to be built. */
export interface Job {
  readonly generator: PartGenerator;
  readonly values: Values<Parameters>;
}
