import type { PartGenerator } from '../engine/part/generator.js';
import type { MadeFixtureDocument } from '../engine/sheet/fixture/make-fixture.js';
import { collectFixtures } from './collect-fixtures.js';
import { requestOf, type PrintChoices } from './print-request.js';

/** What may be asked of fixtures beside what may be asked of a print. */
export interface FixtureChoices {
  readonly operation: number | undefined;
  readonly kind: string | undefined;
}

/** The fixture of an operation, or the set of a whole part. The engine is loaded only now. */
export async function fixturesOfPart(generator: PartGenerator, choices: PrintChoices, asked: FixtureChoices): Promise<readonly MadeFixtureDocument[]> {
  const request = requestOf(generator, choices);
  const { makeFixtures } = await import('../engine/sheet/fixture/make-fixture.js');
  return makeFixtures({ ...request, ...asked }, await collectFixtures());
}
