import type { PartGenerator } from '../engine/part/generator.js';
import type { PrintRequest } from '../engine/sheet/make-print.js';
import type { PrintWishes } from '../engine/sheet/print-wishes.js';
import type { PrintChoices } from './print-choices.js';
import { valuesOf } from './values-of.js';

export type { PrintChoices };

/** How the print is to be made, without what settles the part. */
export const wishesOf = ({ units, secondary, paper, scale, angle, shop }: PrintChoices): PrintWishes => ({
  units,
  secondary,
  paper,
  scale,
  angle,
  ...(shop === undefined ? {} : { shop }),
});

/** The print that a user asks for, with the values of its part. Throws UserError where they are not sound. */
export const requestOf = (generator: PartGenerator, choices: PrintChoices): PrintRequest => ({
  ...valuesOf(generator, choices),
  hand: choices.hand,
  ...wishesOf(choices),
});
