import type { PartGenerator } from '../engine/part/generator.js';
import type { Extra, MadePack } from '../engine/sheet/pack/make-pack.js';
import { documentsOf } from './documents-of-part.js';
import { requestOf, type PrintChoices } from './print-request.js';
import { scaleReportOf, scaleSheetsOf } from './scale-part.js';

/** All sheets of a part in one; of a scaled part what became of it first. The engine is loaded only now. */
export async function packPart(generator: PartGenerator, choices: PrintChoices): Promise<MadePack> {
  const request = requestOf(generator, choices);
  const { prints, plans, pieces, fixtures } = await documentsOf(request);
  const documents = { prints, plans, pieces: await pieces(), fixtures: await fixtures() };
  const [{ packOf }, { partOf }] = await Promise.all([import('../engine/sheet/pack/make-pack.js'), import('../engine/sheet/make-print.js')]);
  return packOf(partOf(request), request, documents, choices.gauge === undefined ? [] : await scalingOf(generator, choices, choices.gauge));
}

async function scalingOf(generator: PartGenerator, choices: PrintChoices, to: string): Promise<readonly Extra[]> {
  const { drawing } = await scaleSheetsOf(await scaleReportOf(generator, choices, { to }), choices);
  return [{ name: 'Scaling', drawing }];
}
