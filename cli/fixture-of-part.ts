import type { PartGenerator } from '../engine/part/generator.js';
import { resolveValues } from '../engine/part/resolve.js';
import type { MadeFixtureDocument } from '../engine/sheet/fixture/make-fixture.js';
import { collectFixtures } from './collect-fixtures.js';
import type { PrintChoices } from './print-part.js';

/** What may be asked of fixtures beside what may be asked of a print. */
export interface FixtureChoices {
  readonly operation: number | undefined;
  readonly kind: string | undefined;
}

/** The fixture of an operation, or the set of a whole part. The engine is loaded only now. */
export async function fixturesOfPart(generator: PartGenerator, choices: PrintChoices, asked: FixtureChoices): Promise<readonly MadeFixtureDocument[]> {
  const { settings, shop, ...wishes } = choices;
  const values = resolveValues(generator, settings, choices.units, shop?.drills);
  const { makeFixtures } = await import('../engine/sheet/fixture/make-fixture.js');
  return makeFixtures({ generator, values, ...wishes, ...asked, ...(shop === undefined ? {} : { shop }) }, await collectFixtures());
}
