import type { PartGenerator } from '../engine/part/generator.js';
import type { MadePlan } from '../engine/sheet/plan/make-plan.js';
import { collectFixtures } from './collect-fixtures.js';
import { requestOf, type PrintChoices } from './print-request.js';

/** The plans of a part, one a hand. The engine is loaded only now. */
export async function planPart(generator: PartGenerator, choices: PrintChoices): Promise<readonly MadePlan[]> {
  const request = requestOf(generator, choices);
  const { makePlan } = await import('../engine/sheet/plan/make-plan.js');
  return makePlan({ ...request, kinds: await collectFixtures() });
}
