import { fileURLToPath } from 'node:url';
import { cutsIn, rectangularStock, stationBook } from '../../../engine/part/author/index.js';
import type { Operation, Part, SetUp } from '../../../engine/part/part.js';
import { checkGenerator } from '../../../engine/part/check-generator.js';
import { resolveValues } from '../../../engine/part/resolve.js';
import { planOf } from '../../../engine/plan/plan.js';
import { factsOf, type OperationFacts } from '../../../engine/plan/stakes/facts.js';
import type { StakesInput } from '../../../engine/plan/stakes/input.js';
import type { Risk, Stake } from '../../../engine/plan/stakes/stake.js';
import { stakesOf } from '../../../engine/plan/stakes/stakes-of.js';
import { statesOf, type OperationState } from '../../../engine/plan/states/state.js';
import type { Maker } from '../../../engine/solid/hand-makers.js';
import { loadKernel } from '../../../engine/solid/kernel.js';
import type { Shop } from '../../../engine/trade/shop/shop.js';
import { builtInPart } from '../../support/built-in-part.js';

const kernel = await loadKernel();

const parts = new Map<string, Promise<Part>>();
const states = new Map<string, readonly OperationState[]>();

/** A built-in part, built once for the tests of a file. */
export function builtIn(name: string): Promise<Part> {
  const part = parts.get(name) ?? builtInPart(name);
  parts.set(name, part);
  return part;
}

/** The states of a part; those of parts with the same forms are worked out once. */
function statesFor(part: Part): readonly OperationState[] {
  const key = JSON.stringify([part.stock.forms, part.operations.map(({ cuts }) => cuts.map(({ id, forms }) => [id, forms]))]);
  const solids = states.get(key) ?? statesOf(kernel, part);
  states.set(key, solids);
  return solids.map((state, i) => ({ ...state, operation: part.operations[i]!, setUp: part.setUps.find(({ id }) => id === part.operations[i]!.setUp)! }));
}

export function inputOf(part: Part, options: { readonly shop?: Shop; readonly makers?: readonly Maker[]; readonly costOf?: StakesInput['costOf'] } = {}): StakesInput {
  const { shop, makers, costOf } = options;
  return { part, states: statesFor(part), plan: planOf(part, 'mm', shop), shop, unit: 'mm', ...(makers === undefined ? {} : { makers }), ...(costOf === undefined ? {} : { costOf }) };
}

/** The number of the operation that makes a cut, or whose title has such words. */
export function numberOf(part: Part, what: string): number {
  const found = part.operations.find(({ cuts, title }) => cuts.some(({ id }) => id === what) || title === what);
  if (found === undefined) throw new Error(`${part.name} has no operation for ${what}`);
  return found.number;
}

/** A built-in part with some of its settings changed. */
export async function partWith(name: string, settings: Readonly<Record<string, string>>): Promise<Part> {
  const path = fileURLToPath(new URL(`../../../generators/parts/${name}.ts`, import.meta.url));
  const module = (await import(path)) as { readonly default: unknown };
  const generator = checkGenerator(module.default, name);
  return generator.build(resolveValues(generator, settings, undefined));
}

export function stakeAt(stakes: readonly Stake[], operation: number): Stake {
  const found = stakes.find((stake) => stake.operation === operation);
  if (found === undefined) throw new Error(`no operation ${operation}`);
  return found;
}

export const riskAt = (stakes: readonly Stake[], operation: number, kind: string): Risk | undefined => stakeAt(stakes, operation).risks.find((risk) => risk.kind === kind);

export function factsAt(input: StakesInput, operation: number): OperationFacts {
  const found = factsOf(input).find((facts) => facts.operation.number === operation);
  if (found === undefined) throw new Error(`no operation ${operation}`);
  return found;
}

type Book = ReturnType<typeof stationBook>;
type Room = ReturnType<typeof cutsIn>;
export interface BlockGround {
  readonly at: Book;
  readonly cut: Room;
  readonly x: ReturnType<Book['datum']>;
  readonly y: ReturnType<Book['datum']>;
  readonly z: ReturnType<Book['datum']>;
}

/** A steel bar 40 long (x), 30 across (y) and 20 high (z, from nought up), milled from above as a test says. */
export function block(work: (ground: BlockGround) => readonly Omit<Operation, 'number' | 'setUp'>[], more: Partial<Part> & { readonly setUp?: Partial<SetUp> } = {}): Part {
  const at = stationBook();
  const [x, y, z] = [at.datum('x', 'left end'), at.datum('y', 'near side'), at.datum('z', 'bottom')];
  const [right, far, top] = [at.from(x, 40, 'right end'), at.from(y, 30, 'far side'), at.from(z, 20, 'top')];
  const stock = rectangularStock({ along: 'x', x: [x, right], y: [y, far], z: [z, top] });
  const operations = work({ at, cut: cutsIn(stock), x, y, z }).map((operation, i) => ({ ...operation, number: 10 * (i + 1), setUp: 'A' }));
  const { setUp, ...rest } = more;
  return {
    name: 'block', title: 'Block', engine: 'Tormentil, 5 inch gauge', units: 'mm', quantity: 1,
    material: { name: 'mild steel 11SMn30' }, stock, stations: at.all(),
    setUps: [{ id: 'A', machine: 'mill', holding: 'vice on parallels', up: '+z', right: '+x', zero: [x.id, y.id, z.id], ...setUp }],
    operations, notes: [], cautions: [], attitude: { kind: 'milled', front: '+z', up: '+y' }, handAxis: 'x', hand: 'right', texture: 3.2,
    ...rest,
  };
}

export const stakesIn = (part: Part, options: Parameters<typeof inputOf>[1] = {}): readonly Stake[] => stakesOf(inputOf(part, options));
