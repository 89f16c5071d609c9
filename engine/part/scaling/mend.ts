import type { Relation } from '../relation.js';
import { brokenAmong, gapOf } from './gap.js';
import { nameOf, sizeOf, type ParameterValue } from './rule.js';

/** Values of a part's parameters by name. */
export type ValuesByName = Readonly<Record<string, ParameterValue>>;

/** A parameter that may be moved where relations ask for it. */
export interface Free {
  readonly name: string;
  /** What a change of its whole size costs, against that of a plain length. */
  readonly weight: number;
  /** As its rule left it. */
  readonly start: number;
  readonly least: number;
  readonly most: number;
  /** Set for what is a bound only, as a least wall: it may go all the way, and gives way first where it does not mend alone. */
  readonly bound?: true;
  /** The sizes that it may take, small to large; any within the limits if not given. */
  readonly options?: readonly Choice[];
}

/** A size that a parameter may take, with those that others take then: a bar is bought with both its sides. */
export interface Choice {
  readonly size: number;
  readonly value: ParameterValue;
  readonly also?: ValuesByName;
}

/** One move of one parameter, and the relation for which it was made. */
export interface Move {
  readonly name: string;
  readonly relation: Relation;
}

export interface Mended {
  readonly values: ValuesByName;
  readonly moves: readonly Move[];
}

/** So many states are looked at before it is given up. */
const MOST = 1500;
/** Nothing is moved further than this part of its size. */
const FURTHEST = 0.6;
/** Moved lengths are rounded away from the break to this, mm. */
const STEP = 0.001;

interface State extends Mended {
  readonly cost: number;
}

/**
 * Values in which all relations hold, changed as little as may be. A search of least cost first: of all states reached, the
 * one with the least cost is taken, which is the sum over its parameters of weight x |change| / size; the first relation that
 * is broken there is mended by each free parameter alone that can, by the least move that makes it hold (by secants, for
 * relations are nearly straight in each size; along the list, for what has listed sizes), and each gives a state more. The
 * first state taken in which nothing is broken is the answer. Equal costs go in the order of finding, so that the same
 * values always give the same answer.
 * @returns undefined where no such values are found.
 */
export function mend(relationsOf: (values: ValuesByName) => readonly Relation[], values: ValuesByName, free: readonly Free[]): Mended | undefined {
  const open: State[] = [{ values, moves: [], cost: 0 }];
  const seen = new Set<string>();
  for (let looked = 0; looked < MOST && open.length > 0; looked += 1) {
    const state = open.splice(cheapest(open), 1)[0]!;
    const relations = relationsOf(state.values);
    const [broken] = brokenAmong(relations);
    if (broken === undefined) return state;
    for (const parameter of free) {
      const changed = moveOf((values) => gapOf(relationsOf({ ...state.values, ...values })[broken]!), parameter, state.values, free);
      if (changed === undefined) continue;
      const next = { ...state.values, ...changed };
      const key = free.map(({ name }) => nameOf(next[name]!) ?? sizeOf(next[name]!)!.toFixed(4)).join(' ');
      if (seen.has(key)) continue;
      seen.add(key);
      const moves = Object.keys(changed).filter((name) => name === parameter.name || changed[name] !== state.values[name]).map((name) => ({ name, relation: relations[broken]! }));
      open.push({ values: next, moves: [...state.moves, ...moves], cost: costOf(next, free) });
    }
  }
  return undefined;
}

const cheapest = (states: readonly State[]): number => states.reduce((best, { cost }, i) => (cost < states[best]!.cost - 1e-12 ? i : best), 0);

const costOf = (values: ValuesByName, free: readonly Free[]): number => free.reduce((sum, { name, weight, start }) => sum + (weight * Math.abs(sizeOf(values[name]!)! - start)) / Math.max(start, 0.1), 0);

/** The least move that mends, or for a bound that cannot mend alone as far as it goes. */
function moveOf(gapWith: (changed: ValuesByName) => number, parameter: Free, values: ValuesByName, free: readonly Free[]): ValuesByName | undefined {
  const { name } = parameter;
  const now = sizeOf(values[name]!)!;
  if (parameter.options !== undefined) return chosenMove(gapWith, parameter, values, free);
  const gapAt = (value: number): number => gapWith({ [name]: value });
  const value = leastMove(gapAt, parameter, now);
  if (value !== undefined) return { [name]: value };
  if (parameter.bound !== true || now <= parameter.least + 1e-9) return undefined;
  return gapAt(parameter.least) > gapAt(now) + 1e-9 ? { [name]: parameter.least } : undefined;
}

/** How far a parameter may be moved from where its rule left it. */
const reach = ({ start, least, most, bound }: Free): readonly [number, number] => [bound === true ? least : Math.max(least, start * (1 - FURTHEST)), Math.min(most, start * (1 + FURTHEST))];

/** Of listed sizes the nearest that mends; where it takes others along, the one that costs least. */
function chosenMove(gapWith: (changed: ValuesByName) => number, parameter: Free, values: ValuesByName, free: readonly Free[]): ValuesByName | undefined {
  const [least, most] = reach(parameter);
  const now = sizeOf(values[parameter.name]!)!;
  const changes = (parameter.options ?? [])
    .filter(({ size, value }) => size >= least - 1e-6 && size <= most + 1e-6 && (Math.abs(size - now) > 1e-6 || nameOf(value) !== nameOf(values[parameter.name]!)))
    .map(({ size, value, also }) => {
      const changed: ValuesByName = { [parameter.name]: value, ...also };
      return { changed, far: also === undefined ? Math.abs(size - now) : costOf({ ...values, ...changed }, free) };
    });
  return changes.sort((a, b) => a.far - b.far).find(({ changed }) => gapWith(changed) >= 0)?.changed;
}

/** The value nearest to `now` at which the gap is no longer short; undefined where none within reach helps. */
function leastMove(gapAt: (value: number) => number, parameter: Free, now: number): number | undefined {
  const [least, most] = reach(parameter);
  const gap = gapAt(now);
  const probe = Math.max(0.01, 0.01 * now);
  const ways = [probe, -probe].filter((by) => now + by >= least - probe && now + by <= most + probe && gapAt(now + by) > gap + 1e-9 * probe);
  for (const by of ways) {
    const found = bySecants(gapAt, now, now + by, gap);
    if (found === undefined) continue;
    const sense = Math.sign(found - now);
    const rounded = Math.round((sense > 0 ? Math.ceil(found / STEP - 1e-6) : Math.floor(found / STEP + 1e-6)) * STEP * 1e6) / 1e6;
    if (sense !== 0 && rounded >= least - 1e-9 && rounded <= most + 1e-9 && gapAt(rounded) >= 0) return rounded;
  }
  return undefined;
}

/** Where a gap comes to nought, from two sizes; a few steps, for most gaps are straight. */
function bySecants(gapAt: (value: number) => number, from: number, to: number, gapFrom: number): number | undefined {
  let [a, b, gapA, gapB] = [from, to, gapFrom, gapAt(to)];
  for (let i = 0; i < 6; i += 1) {
    if (gapB === gapA) return undefined;
    const next = b - (gapB * (b - a)) / (gapB - gapA);
    if (!Number.isFinite(next)) return undefined;
    [a, gapA] = [b, gapB];
    [b, gapB] = [next, gapAt(next)];
    if (Math.abs(gapB) < 1e-7) return b;
  }
  return gapB >= 0 ? b : undefined;
}
