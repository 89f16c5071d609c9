import type { Drill } from '../trade/drills.js';
import type { Thread } from '../trade/threads.js';

/**
 * What a length is made or bought by, where that has sizes of its own: a part of another size takes the nearest of those. An
 * edge is broken against burrs and stays; what is the shop's own (an arbor's collar) does not grow with the part.
 */
export type Follows = 'reamer' | 'ground rod' | 'end mill' | 'corner of an end mill' | 'saw diameter' | 'saw thickness' | 'edge' | 'shop';

/** A length of a kind that scaling treats in its own way. Texts are as the shop writes them: "7/8 in", "12 thou", "3.2 mm". */
export interface LengthParameter {
  readonly kind: 'length' | 'clearance' | 'allowance' | 'wall';
  readonly label: string;
  readonly default: string;
  readonly minimum: string;
  readonly maximum: string;
  readonly follows?: Follows;
  /** Another length or stock of the part that it keeps its proportion to, whatever becomes of that one. */
  readonly with?: string;
  /** Set where another part has the very same size: no part may change it for itself alone. */
  readonly mate?: string;
}

/** A standard thread by its designation: "0-80", "M3", "4BA", "1/4x40". */
export interface ThreadParameter {
  readonly kind: 'thread';
  readonly label: string;
  readonly default: string;
  /** Least and greatest major diameter taken. */
  readonly minimum: string;
  readonly maximum: string;
}

/** A drill or reamer that exists: "#53", "1/16 in", "2.05 mm", "F". */
export interface DrillParameter {
  readonly kind: 'drill';
  readonly label: string;
  readonly default: string;
  readonly minimum: string;
  readonly maximum: string;
}

/** A size of bar, plate or sheet that is sold. */
export interface StockParameter {
  readonly kind: 'stock';
  readonly label: string;
  readonly form: 'round' | 'rectangular' | 'hexagon' | 'sheet';
  /** Of a rectangular bar: sold as a flat or as a square, where it must be one of them; thickness and width of a flat both count. */
  readonly section?: 'flat' | 'square';
  /** Set where its faces stay as bought, so that the part is fitted to it; else it is what the part is cut out of. */
  readonly stays?: true;
  readonly default: string;
  readonly minimum: string;
  readonly maximum: string;
}

/** Degrees. */
export interface AngleParameter {
  readonly kind: 'angle';
  readonly label: string;
  readonly default: number;
  readonly minimum: number;
  readonly maximum: number;
}

export interface CountParameter {
  readonly kind: 'count';
  readonly label: string;
  readonly default: number;
  readonly minimum: number;
  readonly maximum: number;
  /** Set where it counts screws in a row: the parameters that say their thread and their pitch. */
  readonly screws?: { readonly thread: string; readonly pitch: string };
}

export interface ChoiceParameter<T extends string = string> {
  readonly kind: 'choice';
  readonly label: string;
  readonly default: T;
  readonly options: readonly T[];
}

export type Parameter =
  | LengthParameter
  | ThreadParameter
  | DrillParameter
  | StockParameter
  | AngleParameter
  | CountParameter
  | ChoiceParameter;

export type Parameters = Readonly<Record<string, Parameter>>;

/** What a build function gets for each parameter: mm, degrees, a count, a word, a thread or a drill of the tables. */
export type Value<P extends Parameter> = P extends ThreadParameter
  ? Thread
  : P extends DrillParameter
    ? Drill
    : P extends ChoiceParameter<infer T>
      ? T
      : number;

export type Values<P extends Parameters> = { readonly [K in keyof P]: Value<P[K]> };
