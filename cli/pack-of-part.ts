import type { PartGenerator } from '../engine/part/generator.js';
import type { MadePack } from '../engine/sheet/pack/make-pack.js';
import { collectFixtures } from './collect-fixtures.js';
import { requestOf, type PrintChoices } from './print-request.js';
import { scaleReportOf, scaleSheetsOf } from './scale-part.js';

/** All sheets of a part in one; of a scaled part what became of it first. The engine is loaded only now. */
export async function packPart(generator: PartGenerator, choices: PrintChoices): Promise<MadePack> {
  const request = requestOf(generator, choices);
  const { makePack } = await import('../engine/sheet/pack/make-pack.js');
  if (choices.gauge === undefined) return makePack(request, await collectFixtures());
  const { drawing } = await scaleSheetsOf(await scaleReportOf(generator, choices, { to: choices.gauge }), choices);
  return makePack(request, await collectFixtures(), [{ name: 'Scaling', drawing }]);
}
