import { vectorOf } from '../../part/author/directions.js';
import type { Operation, Part, SetUp } from '../../part/part.js';
import type { Solid } from '../../solid/model.js';
import type { Material } from '../../trade/material.js';
import { defaultShop, type Machine, type Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import { besideOf, type Beside } from '../order/beside.js';
import { besideWithin, thinFrom } from '../data/stake-limits.js';
import { machineFrame, type MachineFrame } from '../machine-frame.js';
import { materialOf } from '../material.js';
import { operationPlan } from '../plan.js';
import { runsOf } from '../runs.js';
import { shopMachine } from '../shop-machine.js';
import type { CutterPlan } from '../speeds.js';
import type { StakesInput } from './input.js';
import { wallsLeft, type WallLeft } from './walls-left.js';

/** All that times and risks of one operation are judged by. */
export interface OperationFacts {
  readonly part: Part;
  readonly operation: Operation;
  readonly setUp: SetUp;
  readonly frame: MachineFrame;
  readonly before: Solid;
  readonly after: Solid;
  /** mm3 */
  readonly removed: number;
  readonly cutters: readonly CutterPlan[];
  /** Undefined where the tables do not have it. */
  readonly material?: Material;
  readonly machine?: Machine;
  readonly shop: Shop;
  readonly unit: LengthUnit;
  /** Stretches of operations in one set-up, counted from nought: in which this one stands. */
  readonly run: number;
  /** Of the operations in the same stretch that come before it. */
  readonly earlierInRun: readonly Operation[];
  /** Of the cuts of this operation, those that make the hand, with their part of what differs, 0 to 1. */
  readonly handed: readonly { readonly cut: string; readonly share: number }[];
  /** What stands beside the cuts. */
  readonly beside: () => readonly Beside[];
  /** The thin walls and floors between its cuts and what lies behind them. */
  readonly walls: () => readonly WallLeft[];
}

/** What is dear to find is looked for when first asked, and once. */
function once<T>(find: () => T): () => T {
  let found: { readonly value: T } | undefined;
  return () => (found ??= { value: find() }).value;
}

/** The facts of every operation, in order. */
export function factsOf(input: StakesInput): readonly OperationFacts[] {
  const { part, states, plan, unit, makers = [] } = input;
  const shop = input.shop ?? defaultShop;
  const runs = runsOf(part);
  const material = materialOf(part.material);
  const all = makers.reduce((sum, { volume }) => sum + volume, 0);
  return states.map((state): OperationFacts => {
    const { operation, setUp, before, after, removed } = state;
    const run = runs.findIndex(({ operations }) => operations.includes(operation));
    const inRun = runs[run]!.operations;
    const machine = shopMachine(shop, setUp.machine);
    return {
      part,
      operation,
      setUp,
      frame: machineFrame(part, setUp),
      before,
      after,
      removed,
      cutters: operationPlan(plan, operation)?.cutters ?? [],
      ...(material === undefined ? {} : { material }),
      ...(machine === undefined ? {} : { machine }),
      shop,
      unit,
      run,
      earlierInRun: inRun.slice(0, inRun.indexOf(operation)),
      handed: makers.filter(({ cut }) => operation.cuts.some(({ id }) => id === cut)).map(({ cut, volume }) => ({ cut, share: all === 0 ? 0 : volume / all })),
      beside: once(() => input.besides?.(operation.number) ?? besideOf(part, state, besideWithin)),
      walls: once(() => (after === before ? [] : wallsLeft(after, new Set(operation.cuts.map(({ id }) => id)), thinFrom))),
    };
  });
}

/** Whether the work is packed up at an angle: what points up runs along no axis of the part. */
export const isAngled = ({ machine, up }: SetUp): boolean => machine !== 'lathe' && vectorOf(up).every((part) => Math.abs(part) < 1 - 1e-9);
