import type { Vector3 } from '../../geometry/vector.js';
import type { Phrase } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import { readingsOf, type Reading } from '../../plan/bench/readings.js';
import { standOut, type StandOut } from '../../plan/bench/stand-out.js';
import type { Fixture, FixtureKind } from '../../plan/fixture/fixture.js';
import { needsOf } from '../../plan/fixture/needs-of.js';
import { standingPieces } from '../../plan/fixture/standing.js';
import { planOf, type RunPlan, type ShopPlan } from '../../plan/plan.js';
import type { OperationState } from '../../plan/states/state.js';
import { formsToSolid } from '../../solid/build.js';
import type { HandComparison } from '../../solid/hand.js';
import type { Kernel } from '../../solid/kernel.js';
import { mergedSolid } from '../../solid/merge.js';
import type { Solid } from '../../solid/model.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import { holdingFixtureOf } from '../fixture/holding-fixture.js';
import { judge, type Judged } from './judge.js';
import { holdingForms } from './picture/holding.js';

/** A stretch of operations in one set-up, with the states of the work and what holds it. */
export interface RunGround {
  readonly run: RunPlan;
  readonly states: readonly OperationState[];
  readonly pack: Phrase;
  /** What is measured at each of the states. */
  readonly readings: readonly (readonly Reading[])[];
  /** What is made to hold it, where the set-up asks for something. */
  readonly fixture?: Fixture;
  /** The fixture, or jaws, chuck, packing; undefined where the set-up does not say what it grips. */
  readonly holding?: Solid;
}

/** All that the plan of one hand is made from, as plain data. */
export interface PlanGround extends Judged {
  readonly part: Part;
  readonly handed: boolean;
  readonly plan: ShopPlan;
  readonly runs: readonly RunGround[];
}

export function planGround(
  kernel: Kernel,
  part: Part,
  states: readonly OperationState[],
  facts: { readonly comparison: HandComparison; readonly unit: LengthUnit; readonly shop: Shop | undefined; readonly kinds: readonly FixtureKind[] },
): PlanGround {
  const { shop, unit, comparison } = facts;
  const starts = states.filter(({ setUp }, i) => states[i - 1]?.setUp.id !== setUp.id);
  const plan = planOf(part, unit, shop, starts.map(({ before }) => before));
  const needs = facts.kinds.length === 0 ? [] : needsOf(kernel, part, states, { shop, unit, comparison });
  const runs = plan.runs.map((run, i): RunGround => {
    const own = states.filter(({ operation }) => run.operations.some(({ number }) => number === operation.number));
    const stand = standOut(part, run.frame, own);
    const fixture = needs[i] === undefined ? undefined : holdingFixtureOf(needs[i], facts.kinds);
    const holding = fixture !== undefined ? fixtureSolid(kernel, fixture) : own[0] === undefined ? undefined : holdingOf(kernel, part, run, own, stand);
    return { run, states: own, pack: stand.words, readings: own.map((state) => readingsOf(part, run.frame, state)), ...(fixture === undefined ? {} : { fixture }), ...(holding === undefined ? {} : { holding }) };
  });
  return { part, handed: comparison.handed, ...judge(kernel, part, states, plan, comparison, shop, unit), plan, runs };
}

/** The pieces of a fixture where they stand, all told to hold the work. */
function fixtureSolid(kernel: Kernel, fixture: Fixture): Solid | undefined {
  const pieces = standingPieces(kernel, fixture).map(({ solid }) => solid);
  if (pieces.length === 0) return undefined;
  const whole = mergedSolid(pieces);
  return { ...whole, faces: whole.faces.map((face) => ({ ...face, tag: { cut: 'held by', face: face.tag.face } })) };
}

/** Each body by itself: they touch nowhere. */
function holdingOf(kernel: Kernel, part: Part, { setUp, frame }: RunPlan, states: readonly OperationState[], stand: StandOut): Solid | undefined {
  const bodies = holdingForms(part, setUp, states[0]!.before, spindleOf(states) ?? frame.origin, stand);
  return bodies.length === 0 ? undefined : mergedSolid(bodies.map((body) => formsToSolid(kernel, [body], [], { segments: 32 })));
}

/** A point on the axis about which a set-up's cuts are turned. */
function spindleOf(states: readonly OperationState[]): Vector3 | undefined {
  for (const { operation } of states)
    for (const { forms } of operation.cuts) for (const form of forms) if (form.kind === 'revolution') return form.frame.origin;
  return undefined;
}
