import { mirrorPart } from '../../part/mirror.js';
import type { Part } from '../../part/part.js';
import type { FixtureKind } from '../../plan/fixture/fixture.js';
import { statesOf, type OperationState } from '../../plan/states/state.js';
import type { HandComparison } from '../../solid/hand.js';
import { handsOfPart } from '../../solid/hands-of-part.js';
import { loadKernel, type Kernel } from '../../solid/kernel.js';
import { checkWords } from '../check-words.js';
import { partOf, type PrintRequest } from '../make-print.js';
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
export const makePlan = (request: PrintRequest & Pick<PlanWishes, 'kinds'>): Promise<readonly MadePlan[]> => makePartPlan(partOf(request), request);

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
  const comparison = handsOfPart(kernel, right);
  const hands: readonly Part['hand'][] = !comparison.handed ? ['right'] : asked.hand === 'both' ? ['right', 'left'] : [asked.hand];
  return hands.map((hand) => {
    const part = hand === 'right' ? right : mirrorPart(right);
    return groundOf(kernel, part, statesOf(kernel, part), comparison, asked);
  });
}

function groundOf(kernel: Kernel, part: Part, states: readonly OperationState[], comparison: HandComparison, asked: PlanWishes): PlanGround {
  const { unit } = speechFor(asked, part);
  return planGround(kernel, part, states, { comparison, unit, shop: asked.shop, kinds: asked.kinds ?? [] });
}
