import type { PartGenerator } from '../engine/part/generator.js';
import { resolveValues } from '../engine/part/resolve.js';
import type { MadePlan } from '../engine/sheet/plan/make-plan.js';
import type { PrintChoices } from './print-part.js';

/** The plans of a part, one a hand. The engine is loaded only now. */
export async function planPart(generator: PartGenerator, choices: PrintChoices): Promise<readonly MadePlan[]> {
  const { settings, shop, ...asked } = choices;
  const values = resolveValues(generator, settings, choices.units, shop?.drills);
  const { makePlan } = await import('../engine/sheet/plan/make-plan.js');
  return makePlan({ generator, values, ...asked, ...(shop === undefined ? {} : { shop }) });
}
