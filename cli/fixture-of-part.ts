import type { PartGenerator } from '../engine/part/generator.js';
import type { FixtureKind } from '../engine/plan/fixture/fixture.js';
import type { FixtureRecord } from '../engine/sheet/fixture/fixture-record.js';
import type { FixtureRequest } from '../engine/sheet/fixture/make-fixture.js';
import { collectFixtures } from './collect-fixtures.js';
import { plainData } from './plain-data.js';
import { filesOf, type Format } from './print-files.js';
import { requestOf, wishesOf, type PrintChoices } from './print-request.js';
import type { FixtureOrder, PrintedFixtures } from './threads/fixture-job.js';
import { startThread, type SecondThread } from './threads/second-thread.js';

/** What may be asked of fixtures beside what may be asked of a print. */
export interface FixtureChoices {
  readonly operation: number | undefined;
  readonly kind: string | undefined;
}

type FixtureHelper = SecondThread<FixtureOrder, PrintedFixtures<FixtureRecord>>;

/** Room for what the second thread makes and drops again, MB: more of it would save no time. */
const young = 24;

/** The fixture of an operation, or the set of a whole part: chosen on one thread while those chosen are printed on another. */
export async function fixturesOfPart(generator: PartGenerator, choices: PrintChoices, asked: FixtureChoices, formats: readonly Format[]): Promise<readonly PrintedFixtures[]> {
  const helper: FixtureHelper = startThread('fixture-worker.js', young);
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
  const inSet = asked.operation === undefined;
  let told: unknown;
  const hands = chooseFixtures(await loadKernel(), right, request, kinds, (chosen, part) => {
    if (told !== part) helper.order({ kind: 'work', part, wishes, formats, inSet });
    told = part;
    helper.order({ kind: 'fixture', chosen });
  });
  const loading = import('../engine/sheet/fixture/set-document.js');
  const prints = await Promise.all(hands.flatMap(({ own }) => own.map(() => helper.next())));
  const { setDocument } = await loading;
  const documents: PrintedFixtures[] = [];
  let done = 0;
  for (const hand of hands) {
    const own = prints.slice(done, (done += hand.own.length));
    const set = inSet ? [setDocument(hand, own.map(({ record }) => record), wishes)] : [];
    for (const made of set) documents.push({ record: made.record, files: await filesOf([made], formats) });
    documents.push(...own);
  }
  return documents;
}

async function printAlone(request: FixtureRequest, kinds: readonly FixtureKind[], formats: readonly Format[]): Promise<readonly PrintedFixtures[]> {
  const { makeFixtures } = await import('../engine/sheet/fixture/make-fixture.js');
  const documents: PrintedFixtures[] = [];
  for (const made of await makeFixtures(request, kinds)) documents.push({ record: made.record, files: await filesOf([made], formats) });
  return documents;
}
