import { mirrorPart } from '../../part/mirror.js';
import type { Part } from '../../part/part.js';
import type { FixtureKind } from '../../plan/fixture/fixture.js';
import { statesOf, type OperationState } from '../../plan/states/state.js';
import { compareSolidHands, HAND_SEGMENTS, type HandComparison } from '../../solid/hand.js';
import { loadKernel, type Kernel } from '../../solid/kernel.js';
import type { Solid } from '../../solid/model.js';
import { reflectSolid } from '../../solid/reflect.js';
import { soundSolid } from '../../solid/sound-solid.js';
import { checkWords } from '../check-words.js';
import type { PrintRequest } from '../make-print.js';
import { papersFor, scalesFor, speechFor, type PrintWishes } from '../print-wishes.js';
import { planGround, type PlanGround } from './plan-ground.js';
import { planHand, type MadePlan } from './plan-hand.js';

export type { MadePlan };

/** How a plan is to be made; it takes what a print takes, but draws its pictures to no scale. */
export interface PlanWishes extends PrintWishes {
  readonly hand: 'right' | 'left' | 'both';
  /** Kinds of fixture from which one is picked where a set-up asks for it; none: the plan names none. */
  readonly kinds?: readonly FixtureKind[];
}

/** Makes the plans of a generator's part, one a hand; a part that is not handed has but one. Throws UserError as makePartPlan does. */
export const makePlan = (request: PrintRequest & Pick<PlanWishes, 'kinds'>): Promise<readonly MadePlan[]> => makePartPlan(request.generator.build(request.values), request);

/**
 * Makes the plans of any part, one a hand.
 * @param right the right hand of the part.
 * @throws UserError where its solid cannot be made, its words cannot be lettered, or the sheet is too small for a row.
 */
export async function makePartPlan(right: Part, asked: PlanWishes): Promise<readonly MadePlan[]> {
  return (await planGroundsFor(right, asked)).map((ground) => planHand(ground, asked));
}

/** What the plans of a part are made from, one a hand; each may then be drawn by itself. */
export async function planGroundsFor(right: Part, asked: PlanWishes): Promise<readonly PlanGround[]> {
  papersFor(asked);
  scalesFor(asked);
  const kernel = await loadKernel();
  checkWords(right);
  const comparison = compareSolidHands(kernel, soundSolid(kernel, right, { segments: HAND_SEGMENTS }), right.handAxis);
  const hands: readonly Part['hand'][] = !comparison.handed ? ['right'] : asked.hand === 'both' ? ['right', 'left'] : [asked.hand];
  const states = statesOf(kernel, right);
  return hands.map((hand) => {
    if (hand === 'right') return groundOf(kernel, right, states, comparison, asked);
    const part = mirrorPart(right);
    return groundOf(kernel, part, states.map((state) => reflected(state, part)), comparison, asked);
  });
}

/** A state as the other hand has it. */
function reflected(state: OperationState, part: Part): OperationState {
  const image = (solid: Solid): Solid => reflectSolid(solid, part.handAxis);
  const operation = part.operations.find(({ number }) => number === state.operation.number)!;
  return { ...state, operation, setUp: part.setUps.find(({ id }) => id === operation.setUp)!, before: image(state.before), after: image(state.after) };
}

function groundOf(kernel: Kernel, part: Part, states: readonly OperationState[], comparison: HandComparison, asked: PlanWishes): PlanGround {
  const { unit } = speechFor(asked, part);
  return planGround(kernel, part, states, { comparison, unit, shop: asked.shop, kinds: asked.kinds ?? [] });
}
