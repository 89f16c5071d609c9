import type { PartGenerator } from '../engine/part/generator.js';
import type { FixtureKind } from '../engine/plan/fixture/fixture.js';
import { collectFixtures } from './collect-fixtures.js';
import { startFixtureHelper, type FixtureHelper } from './fixture-helper.js';
import type { PrintedFixtures } from './fixture-job.js';
import { plainData } from './plain-data.js';
import { filesOf, type Format } from './print-files.js';
import { requestOf, wishesOf, type PrintChoices } from './print-request.js';

/** What may be asked of fixtures beside what may be asked of a print. */
export interface FixtureChoices {
  readonly operation: number | undefined;
  readonly kind: string | undefined;
}

/** The fixture of an operation, or the set of a whole part: chosen on one thread while those chosen are printed on another. */
export async function fixturesOfPart(generator: PartGenerator, choices: PrintChoices, asked: FixtureChoices, formats: readonly Format[]): Promise<readonly PrintedFixtures[]> {
  const helper = startFixtureHelper();
  try {
    return await printWith(helper, generator, choices, asked, formats);
  } finally {
    helper.end();
  }
}

/** The engine is loaded only now: most commands do without it. */
async function printWith(helper: FixtureHelper, generator: PartGenerator, choices: PrintChoices, asked: FixtureChoices, formats: readonly Format[]): Promise<readonly PrintedFixtures[]> {
  const request = { ...requestOf(generator, choices), ...asked };
  const [kinds, { chooseFixtures }, { loadKernel }] = await Promise.all([collectFixtures(), import('../engine/sheet/fixture/choose-fixtures.js'), import('../engine/solid/kernel.js')]);
  const right = request.generator.build(request.values);
  // What is more than data cannot go to another thread.
  if (!plainData(right)) return printAlone(request, kinds, formats);
  const wishes = wishesOf(choices);
  let told: unknown;
  const hands = chooseFixtures(await loadKernel(), right, request, kinds, (chosen, part) => {
    if (told !== part) helper.order({ kind: 'work', part, wishes, formats });
    told = part;
    helper.order({ kind: 'fixture', chosen });
  });
  const sets = asked.operation === undefined ? await printedSets(hands, wishes, formats) : [];
  const prints = await helper.printed(hands.reduce((sum, { own }) => sum + own.length, 0));
  let done = 0;
  return hands.flatMap(({ own }, i) => [...sets.slice(i, i + 1), ...prints.slice(done, (done += own.length))]);
}

type Hands = ReturnType<(typeof import('../engine/sheet/fixture/choose-fixtures.js'))['chooseFixtures']>;

async function printedSets(hands: Hands, wishes: ReturnType<typeof wishesOf>, formats: readonly Format[]): Promise<readonly PrintedFixtures[]> {
  const { setDocument } = await import('../engine/sheet/fixture/set-document.js');
  const sets: PrintedFixtures[] = [];
  for (const { part, handed, set } of hands) {
    const made = setDocument(part, handed, set, wishes);
    sets.push({ record: made.record, files: await filesOf([made], formats) });
  }
  return sets;
}

async function printAlone(request: Parameters<(typeof import('../engine/sheet/fixture/make-fixture.js'))['makeFixtures']>[0], kinds: readonly FixtureKind[], formats: readonly Format[]): Promise<readonly PrintedFixtures[]> {
  const { makeFixtures } = await import('../engine/sheet/fixture/make-fixture.js');
  const documents: PrintedFixtures[] = [];
  for (const made of await makeFixtures(request, kinds)) documents.push({ record: made.record, files: await filesOf([made], formats) });
  return documents;
}
