import type { Part } from '../../engine/part/part.js';
import type { ChosenFixture } from '../../engine/sheet/fixture/chosen-fixture.js';
import type { MadeFixture } from '../../engine/sheet/fixture/fixture-drawing.js';
import type { MadePrint } from '../../engine/sheet/make-print.js';
import type { TestPieces } from '../../engine/sheet/make-test-piece.js';
import type { MadePlan } from '../../engine/sheet/plan/make-plan.js';
import type { PlanGround } from '../../engine/sheet/plan/plan-ground.js';
import type { PrintWishes } from '../../engine/sheet/print-wishes.js';

/** How the documents of a pack are to be made. */
export type PackWishes = PrintWishes & { readonly hand: 'right' | 'left' | 'both' };

/** What the second thread is told: to make the prints, then the test pieces; to draw a plan; then of which work the fixtures are that come next, and each of them. */
export type PackOrder =
  | { readonly kind: 'prints' | 'test pieces'; readonly right: Part; readonly asked: PackWishes }
  | { readonly kind: 'plan'; readonly ground: PlanGround; readonly asked: PackWishes }
  | { readonly kind: 'work'; readonly part: Part; readonly asked: PackWishes }
  | { readonly kind: 'fixture'; readonly chosen: ChosenFixture };

/** What it answers, each to its order. */
export type PackAnswer =
  | { readonly kind: 'prints'; readonly prints: readonly MadePrint[] }
  | { readonly kind: 'test pieces'; readonly pieces: TestPieces }
  | { readonly kind: 'plan'; readonly plan: MadePlan }
  | { readonly kind: 'fixture'; readonly fixture: MadeFixture };
