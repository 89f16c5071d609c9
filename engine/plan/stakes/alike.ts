import type { Risk, Stake } from './stake.js';

/** Which piece of the part it is does not make a cut another cut. */
const places = new Set(['place', 'behind', 'beside', 'into', 'hand', 'share']);

/** The figures of a risk, the same text for the same cut elsewhere on the part. */
const keyOf = ({ kind, figures }: Risk): string => `${kind} ${Object.entries(figures).filter(([name]) => !places.has(name)).map(([name, value]) => `${name} ${typeof value === 'number' ? value.toPrecision(6) : value}`).join(' ')}`;

/** What the risks of an operation are, whatever their places; empty where it has none. */
const risksKey = ({ risks }: Pick<Stake, 'risks'>): string => risks.map(keyOf).sort().join('; ');

/** For each of some stakes, in the order of the operations, the numbers of the later ones with the very same risks. */
export function alikeOf(stakes: readonly Pick<Stake, 'risks' | 'operation'>[]): ReadonlyMap<number, readonly number[]> {
  const keys = stakes.map(risksKey);
  return new Map(stakes.map(({ operation }, i) => [operation, keys[i] === '' ? [] : stakes.filter((_, k) => k > i && keys[k] === keys[i]).map((later) => later.operation)]));
}
