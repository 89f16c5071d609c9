import { formatLength } from '../../units/format.js';
import type { LengthUnit } from '../../units/length.js';
import type { Shop } from '../shop/shop.js';
import type { SumValues } from './values.js';

export type Json = string | number | boolean | null | readonly Json[] | { readonly [name: string]: Json };

export type ArgumentKind =
  | 'length'
  | 'lengths'
  | 'points'
  | 'angle'
  | 'count'
  | 'number'
  | 'choice'
  | 'text'
  | 'thread'
  | 'drill'
  | 'class'
  | 'material'
  | 'force'
  | 'stress'
  | 'surface-speed'
  | 'temperature-rise';

export interface SumArgument {
  /** As written at the command line, without dashes. */
  readonly name: string;
  readonly kind: ArgumentKind;
  readonly about: string;
  readonly required?: boolean;
  /** As the user would write it. */
  readonly default?: string;
  readonly choices?: readonly string[];
  /** For lengths and numbers: "positive" if not given. */
  readonly sign?: 'any' | 'not-negative' | 'positive';
}

/** What the sum may look up besides its arguments. */
export interface SumContext {
  /** The unit of lengths in the working. */
  readonly unit: LengthUnit;
  readonly shop: Shop;
}

/**
 * A sum's outcome: `result` in millimetres and degrees unless a name says otherwise, `steps` as a machinist would write
 * the working.
 */
export interface SumResult {
  readonly result: { readonly [name: string]: Json };
  readonly steps: readonly string[];
}

export interface Sum {
  readonly name: string;
  readonly summary: string;
  /** Arguments of one use, as the user would write them. */
  readonly example: Readonly<Record<string, string>>;
  readonly arguments: readonly SumArgument[];
  /** Where the formula comes from. */
  readonly source: string;
  /** @throws UserError where the values allow no answer. */
  readonly compute: (values: SumValues, context: SumContext) => SumResult;
}

/** A length in the working: three decimals of a millimetre, four of an inch, and the unit. */
export const say = (mm: number, { unit }: { readonly unit: LengthUnit }): string => `${formatLength(mm, unit, unit === 'in' ? 4 : 3)} ${unit}`;

/** A plain number in the working, to so many significant figures. */
export const figures = (value: number, digits = 4): string => String(Number(value.toPrecision(digits)));
