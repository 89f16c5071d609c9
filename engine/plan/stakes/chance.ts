import type { Phrase } from '../../part/cut.js';
import { chanceRows, greatestChance, type RiskKind } from '../../trade/data/chances.js';
import type { OperationFacts } from './facts.js';
import type { Risk } from './stake.js';

/** Finds the risks of one kind in an operation. */
export type RiskFinder = (facts: OperationFacts) => readonly Risk[];

export const between = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** The chance that one at least of several independent things happens: 1 less the product of what each leaves. */
export const anyOf = (chances: readonly number[]): number => 1 - chances.reduce((left, chance) => left * (1 - chance), 1);

export interface Finding {
  readonly kind: RiskKind;
  /** How many times the chance of the table the figures make it, before holes are counted. */
  readonly factor: number;
  readonly holes?: number;
  readonly because: Phrase;
  readonly figures: Readonly<Record<string, number | string>>;
}

/**
 * A risk whose chance is that of the table, or of the shop file, times what its figures make of it. With holes: that of any of
 * them. Never above what the table calls greatest; nought stays nought.
 */
export function riskOf({ shop }: Pick<OperationFacts, 'shop'>, { kind, factor, holes = 1, because, figures }: Finding): Risk {
  const row = chanceRows[kind];
  const own = shop.chances?.[kind];
  const each = Math.min(greatestChance, (own ?? row.chance) * factor);
  const chance = Math.min(greatestChance, anyOf(Array.from({ length: holes }, () => each)));
  return { kind, chance, because, figures: { ...figures, ofTable: own ?? row.chance, factor, ...(holes > 1 ? { holes } : {}) }, source: own === undefined ? row.source : 'shop file' };
}

/** One figure with at most two digits behind the point. */
export const say = (value: number, digits = 2): string => String(Number(value.toFixed(digits)));

/** "8 holes", "the hole". */
export const holesInWords = (count: number): string => (count > 1 ? `${count} holes` : 'one hole');
