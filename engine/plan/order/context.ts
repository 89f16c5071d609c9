import type { PhraseSize } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import type { Material } from '../../trade/material.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import type { Finding } from '../finding.js';
import { machineFrame, type MachineFrame } from '../machine-frame.js';
import { materialOf } from '../material.js';
import type { OperationState } from '../states/state.js';

/** What all checks of the order look at; made once for a part. */
export interface OrderContext {
  readonly part: Part;
  readonly states: readonly OperationState[];
  readonly shop: Shop;
  readonly unit: LengthUnit;
  /** Undefined where the tables do not have it. */
  readonly material: Material | undefined;
}

/** One check: what it finds in one operation. It looks at nothing else than these two. */
export type Check = (context: OrderContext, state: OperationState) => readonly Finding[];

export const contextOf = (part: Part, states: readonly OperationState[], shop: Shop, unit: LengthUnit): OrderContext => ({ part, states, shop, unit, material: materialOf(part.material) });

export const frameOf = ({ part }: OrderContext, { setUp }: OperationState): MachineFrame => machineFrame(part, setUp);

/** The states of one stretch in one set-up, without the work being taken out: those before and after `state`, and itself. */
export function stretchOf({ states }: OrderContext, state: OperationState): readonly OperationState[] {
  const here = states.indexOf(state);
  let [from, to] = [here, here];
  while (states[from - 1]?.setUp.id === state.setUp.id) from -= 1;
  while (states[to + 1]?.setUp.id === state.setUp.id) to += 1;
  return states.slice(from, to + 1);
}

export const isFirst = (context: OrderContext, state: OperationState): boolean => stretchOf(context, state)[0] === state;

/** Where a limit is no standard but what shops do. */
export const commonPractice = 'common practice';

/** A length in a sentence: to a hundredth of a millimetre, which is finer than any of these figures matters. */
export const mm = (length: number): PhraseSize => ({ length: Math.round(length * 100) / 100 });
export const acrossRound = (length: number): PhraseSize => ({ ...mm(length), sign: 'diameter' });

/** A number without a unit in a sentence: one decimal. */
export const plain = (value: number): string => String(Math.round(value * 10) / 10);

/** A figure of a record. */
export const figureOf = (value: number): number => Math.round(value * 1000) / 1000;
