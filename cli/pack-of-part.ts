import type { PartGenerator } from '../engine/part/generator.js';
import type { Extra, MadePack, PartDocuments } from '../engine/sheet/pack/make-pack.js';
import { asFarAsCan } from './as-far-as-can.js';
import { documentsOf, type DocumentsMade } from './documents-of-part.js';
import { requestOf, type PrintChoices } from './print-request.js';
import { scaleReportOf, scaleSheetsOf } from './scale-part.js';

/**
 * All sheets of a part in one; of a scaled part what became of it first. Test piece and fixtures are help only: where one of
 * them cannot be made at another size, the pack says so and goes without. The engine is loaded only now.
 */
export async function packPart(generator: PartGenerator, choices: PrintChoices): Promise<MadePack> {
  const request = requestOf(generator, choices);
  const { prints, plans, pieces, fixtures } = await documentsOf(request);
  const help = choices.gauge === undefined ? { pieces: await pieces(), fixtures: await fixtures() } : await helpThereIs(pieces, fixtures);
  const documents = { prints, plans, ...help };
  const [{ packOf }, { partOf }] = await Promise.all([import('../engine/sheet/pack/make-pack.js'), import('../engine/sheet/make-print.js')]);
  return packOf(partOf(request), request, documents, choices.gauge === undefined ? [] : await scalingOf(generator, choices, choices.gauge));
}

/** What there is of test piece and fixtures, and why the rest is not there. */
async function helpThereIs(pieces: DocumentsMade['pieces'], fixtures: DocumentsMade['fixtures']): Promise<Pick<PartDocuments, 'pieces' | 'fixtures' | 'noFixtures'>> {
  const { leftOut, orNone } = asFarAsCan();
  const [some] = await orNone(async () => [await pieces()]);
  const noPiece = leftOut.at(-1);
  const made = await orNone(fixtures);
  const noFixtures = leftOut.slice(noPiece === undefined ? 0 : 1).at(-1);
  return { pieces: some ?? { made: [], ...(noPiece === undefined ? {} : { none: noPiece }) }, fixtures: made, ...(noFixtures === undefined ? {} : { noFixtures }) };
}

async function scalingOf(generator: PartGenerator, choices: PrintChoices, to: string): Promise<readonly Extra[]> {
  const { drawing } = await scaleSheetsOf(await scaleReportOf(generator, choices, { to }), choices);
  return [{ name: 'Scaling', drawing }];
}
