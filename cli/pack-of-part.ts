import type { PartGenerator } from '../engine/part/generator.js';
import type { MadePack } from '../engine/sheet/pack/make-pack.js';
import { collectFixtures } from './collect-fixtures.js';
import { requestOf, type PrintChoices } from './print-request.js';

/** All sheets of a part in one. The engine is loaded only now. */
export async function packPart(generator: PartGenerator, choices: PrintChoices): Promise<MadePack> {
  const request = requestOf(generator, choices);
  const { makePack } = await import('../engine/sheet/pack/make-pack.js');
  return makePack(request, await collectFixtures());
}
