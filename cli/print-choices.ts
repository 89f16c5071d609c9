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
  /** The gauge, scale or factor to which the part is scaled first; undefined for the part as it is. */
  readonly gauge?: string | undefined;
}
