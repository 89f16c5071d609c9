import type { Phrase } from '../part/cut.js';
import type { Operation, Part, SetUp } from '../part/part.js';
import type { Solid } from '../solid/model.js';
import { defaultShop, type Shop } from '../trade/shop/shop.js';
import type { LengthUnit } from '../units/length.js';
import { extentsAfter, extentsOf } from './extents.js';
import { machineFrame, type MachineFrame } from './machine-frame.js';
import { phraseOnMachine } from './machine-words.js';
import { runsOf } from './runs.js';
import { readerOf, type OperationSettings, type SettingBlock } from './setting.js';
import { settingsOf } from './settings.js';
import { countingWords, pickUp, zeroWords, type Counting } from './set-up-plan.js';
import { shopMachine } from './shop-machine.js';
import { cutterPlans, type CutterPlan } from './speeds.js';
import { listsAnything, stockLack } from './stock-lack.js';
import { lacksOf, type Lack } from './to-get.js';

export interface OperationPlan extends OperationSettings {
  readonly number: number;
  /** What to do, a phrase a cut, with the machine's letters for its axes. */
  readonly instructions: readonly Phrase[];
  readonly cutters: readonly CutterPlan[];
  readonly lacks: readonly Lack[];
}

/** A stretch of operations in one set-up. */
export interface RunPlan {
  readonly setUp: SetUp;
  readonly frame: MachineFrame;
  readonly zero: readonly string[];
  readonly counting?: Counting;
  readonly pickUp?: SettingBlock;
  readonly operations: readonly OperationPlan[];
}

/** How a part is made in a shop: what is set, how fast, and what is to be got. */
export interface ShopPlan {
  /** Whose machines these are. */
  readonly machines: string;
  readonly runs: readonly RunPlan[];
  readonly toGet: readonly Lack[];
  /** False where no list of the shop says what is at hand. */
  readonly compared: boolean;
}

/**
 * The plan of a part.
 * @param shop undefined for a typical small lathe and mill.
 * @param befores the work as each run finds it, in order; without it edges to touch are not told.
 */
export function planOf(part: Part, unit: LengthUnit, shop: Shop | undefined, befores: readonly Solid[] = []): ShopPlan {
  const listener = { shop: shop ?? defaultShop, unit };
  const runs = runsOf(part).map(({ setUp, operations }, i): RunPlan => {
    const frame = machineFrame(part, setUp);
    const machine = shopMachine(listener.shop, setUp.machine);
    const reader = readerOf(machine, unit);
    const before = befores[i];
    let extents = before === undefined ? undefined : extentsOf(before, frame);
    const counting = countingWords(setUp, machine);
    const edges = pickUp(frame, extents, reader);
    let untouched = true;
    const planned = operations.map((operation): OperationPlan => {
      const cutters = cutterPlans(part, setUp, operation, frame, listener);
      if (extents !== undefined) extents = extentsAfter(extents, frame, operation);
      const set = settingsOf({ part, frame, operation, cutters, reader, extents, before: untouched ? before : undefined });
      if (operation.cuts.some(({ forms }) => forms.length > 0)) untouched = false;
      return { number: operation.number, instructions: operation.cuts.map((cut) => phraseOnMachine(cut.instruction, frame)), cutters, ...set, lacks: lacksOf(part, operation, cutters, listener) };
    });
    return { setUp, frame, zero: zeroWords(part, setUp, frame, unit), ...(counting === undefined ? {} : { counting }), ...(edges === undefined ? {} : { pickUp: edges }), operations: planned };
  });
  const lacks = [...stockLack(part, listener), ...runs.flatMap(({ operations }) => operations.flatMap((operation) => operation.lacks))];
  return {
    machines: machinesOf(shop),
    runs,
    toGet: lacks.filter(({ toGet }, i) => lacks.findIndex((other) => other.toGet === toGet) === i),
    compared: listsAnything(listener.shop),
  };
}

/** Whose machines are reckoned with. */
export const machinesOf = (shop: Shop | undefined): string =>
  shop === undefined ? 'a typical small lathe and mill, without read-outs: give your own with a shop file' : shop.machines.map(({ name, kind }) => (name === kind ? name : `${name} (${kind})`)).join(', ');

export const operationPlan = (plan: ShopPlan, operation: Operation): OperationPlan | undefined =>
  plan.runs.flatMap(({ operations }) => operations).find(({ number }) => number === operation.number);
