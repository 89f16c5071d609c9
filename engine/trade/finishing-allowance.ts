import { nearestClause } from '../units/nearest-name.js';
import { UserError } from '../units/user-error.js';
import { datumSpreads, holdingSpreads } from './data/datum-spreads.js';

export interface AllowanceCase {
  /** What the work is located or picked up from: a name of `datumSpreads`. */
  readonly datum: string;
  /** How it is held for the finishing cut: a name of `holdingSpreads`. */
  readonly holding: string;
  /** Length over which it may stand out of square, mm. */
  readonly length: number;
  /** Out of square over 100 mm; 0.05 mm if not given. */
  readonly squareness?: number;
  /** Spread of the datum in place of the table, mm. */
  readonly pickUp?: number;
}

export interface AllowanceTerm {
  readonly name: 'pick-up' | 'run-out' | 'squareness' | 'lift';
  /** mm */
  readonly value: number;
  readonly source: string;
}

export interface FinishingAllowance {
  readonly terms: readonly AllowanceTerm[];
  /** All against one, and the root of the squares, mm. */
  readonly worst: number;
  readonly likely: number;
  /** Where to measure what stands on each side. */
  readonly measure: string;
}

function named<T>(table: Readonly<Record<string, T>>, name: string, what: string): T {
  const row = Object.hasOwn(table, name) ? table[name] : undefined;
  if (row === undefined) throw new UserError(`${what} "${name}" is not in the table: choose ${Object.keys(table).join(', ')}${nearestClause(name, Object.keys(table))}.`);
  return row;
}

/**
 * What can go wrong between roughing and the finishing cut, each side: pick-up + run-out + squareness x length + lift. An
 * allowance smaller than `worst` may leave metal standing on one side and none on the other.
 * @throws UserError for a datum or a way of holding that is not in the tables.
 */
export function finishingAllowance({ datum: datumName, holding: holdingName, length, squareness = 0.05, pickUp }: AllowanceCase): FinishingAllowance {
  const datum = named(datumSpreads, datumName, 'datum');
  const holding = named(holdingSpreads, holdingName, 'holding');
  const terms: readonly AllowanceTerm[] = [
    { name: 'pick-up', value: pickUp ?? datum.spread, source: pickUp === undefined ? datum.source : 'as given' },
    { name: 'run-out', value: holding.runOut, source: holding.source },
    { name: 'squareness', value: (squareness * length) / 100, source: 'squareness x length' },
    { name: 'lift', value: holding.lift, source: holding.source },
  ];
  return {
    terms,
    worst: terms.reduce((total, { value }) => total + value, 0),
    likely: Math.hypot(...terms.map(({ value }) => value)),
    measure: datum.measure,
  };
}
