import type { PartGenerator } from '../engine/part/generator.js';
import { resolveValues } from '../engine/part/resolve.js';
import type { PrintRequest } from '../engine/sheet/make-print.js';
import type { PrintWishes } from '../engine/sheet/print-wishes.js';
import type { Shop } from '../engine/trade/shop/shop.js';

/** What a user may ask of a print; what is left out follows from the part. */
export interface PrintChoices {
  readonly settings: Readonly<Record<string, string>>;
  readonly hand: 'right' | 'left' | 'both';
  readonly units: 'in' | 'mm' | undefined;
  /** Each length in the other unit too, in brackets. */
  readonly secondary: boolean;
  readonly paper: string | undefined;
  readonly scale: string | undefined;
  readonly angle: 'third' | 'first';
  /** What the user's shop has; undefined for a typical small lathe and mill. */
  readonly shop?: Shop | undefined;
}

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
  generator,
  values: resolveValues(generator, choices.settings, choices.units, choices.shop?.drills),
  hand: choices.hand,
  ...wishesOf(choices),
});
