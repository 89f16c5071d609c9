import type { Dial, Machine, SlideName } from '../trade/shop/shop.js';
import type { LengthUnit } from '../units/length.js';
import { dialWords } from './figures.js';

/**
 * One thing to set. Coordinates are the machine's, mm from the zero of the set-up, not rounded; `text` is what is printed of
 * it, as read-out or dial shows it.
 */
export interface Setting {
  readonly what: string;
  readonly x?: number;
  readonly y?: number;
  readonly z?: number;
  /** To turn or bore, mm. */
  readonly diameter?: number;
  /** Of the spindle from the pivot, and from which angle to which the work is swung, degrees. */
  readonly radius?: number;
  readonly angles?: readonly [number, number];
  readonly text: string;
}

/** How settings stand on paper: sentences, and tables whose columns are read across. */
export type SettingBlock =
  | { readonly kind: 'lines'; readonly lines: readonly string[] }
  | {
      readonly kind: 'table';
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
      /** Each row stands for itself: the rows may go on in a second table beside the first. */
      readonly free: boolean;
    };

export interface OperationSettings {
  readonly settings: readonly Setting[];
  readonly blocks: readonly SettingBlock[];
}

/** How the user of a machine reads positions. */
export interface Reader {
  readonly unit: LengthUnit;
  /** Turns and divisions for a slide at `mm` from its zero; undefined where it has a read-out, or no dial that is known. */
  readonly dial: (slide: SlideName, mm: number) => string | undefined;
}

export const readerOf = (machine: Machine | undefined, unit: LengthUnit): Reader => ({
  unit,
  dial: (slide, mm) => {
    const dial: Dial | undefined = machine === undefined || machine.readout ? undefined : machine.dials[slide];
    return dial === undefined ? undefined : dialWords(mm, dial);
  },
});

/** A table without the columns in which no row has anything. */
export function table(head: readonly string[], rows: readonly (readonly (string | undefined)[])[], free = false): SettingBlock {
  const kept = head.map((_, column) => rows.some((row) => row[column] !== undefined && row[column] !== ''));
  const of = <T>(cells: readonly T[]): readonly T[] => cells.filter((_, column) => kept[column]);
  return { kind: 'table', head: of(head), rows: rows.map((row) => of(row).map((cell) => cell ?? '')), free };
}
