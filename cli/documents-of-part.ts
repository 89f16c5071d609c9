import type { Part } from '../engine/part/part.js';
import type { FixtureKind } from '../engine/plan/fixture/fixture.js';
import type { MadeFixtureDocument } from '../engine/sheet/fixture/fixture-document.js';
import type { PrintRequest } from '../engine/sheet/make-print.js';
import type { MadePlan } from '../engine/sheet/plan/make-plan.js';
import type { PartDocuments } from '../engine/sheet/pack/make-pack.js';
import { collectFixtures } from './collect-fixtures.js';
import { plainData } from './plain-data.js';
import type { PackAnswer, PackOrder, PackWishes } from './threads/pack-job.js';
import { startThread, unwatched, type SecondThread } from './threads/second-thread.js';

type Helper = SecondThread<PackOrder, PackAnswer>;

/** Room for what the second thread makes and drops again, MB. */
const young = 96;

/** The documents of a part. Test pieces and fixtures are help only: what failed of them is thrown when they are asked for. */
export interface DocumentsMade extends Pick<PartDocuments, 'prints' | 'plans'> {
  readonly pieces: () => Promise<PartDocuments['pieces']>;
  readonly fixtures: () => Promise<PartDocuments['fixtures']>;
}

/**
 * Makes all documents of a part on two threads: prints, plans, test pieces and fixtures.
 * @throws UserError where the part cannot be printed or planned.
 */
export async function documentsOf(request: PrintRequest): Promise<DocumentsMade> {
  const helper: Helper = startThread('pack-worker.js', young);
  try {
    return await documentsWith(helper, request);
  } finally {
    helper.end();
  }
}

/** The engine is loaded only now. */
async function documentsWith(helper: Helper, request: PrintRequest): Promise<DocumentsMade> {
  const [{ partFor }, kinds] = await Promise.all([import('../engine/sheet/make-print.js'), collectFixtures()]);
  const right = partFor(request);
  const { generator, values, ...asked } = request;
  // What is more than data cannot go to another thread.
  if (!plainData(right)) return documentsAlone({ ...asked, generator, values }, kinds);
  helper.order({ kind: 'prints', right, asked });
  helper.order({ kind: 'test pieces', right, asked });
  const [prints, pieces] = [answered(helper, 'prints'), answered(helper, 'test pieces')];
  const plans = await outcomeOf(plansBy(helper, right, asked, kinds));
  const fixtures = await outcomeOf(fixturesOf(helper, right, asked, kinds));
  // Mistakes are told in one order, whichever thread meets them first.
  const made = { prints: (await prints).prints, plans: await Promise.all(await plans()) };
  const help = await outcomeOf(pieces.then((answer) => answer.pieces));
  return { ...made, pieces: help, fixtures };
}

async function documentsAlone(request: PrintRequest, kinds: readonly FixtureKind[]): Promise<DocumentsMade> {
  const [{ makePrint, partOf }, { partTestPiecesWhereWorth }, { makeFixtures }] = await Promise.all([
    import('../engine/sheet/make-print.js'),
    import('../engine/sheet/make-test-piece.js'),
    import('../engine/sheet/fixture/make-fixture.js'),
  ]);
  const right = partOf(request);
  return {
    prints: await makePrint(request),
    plans: await plansOf(right, request, kinds),
    pieces: await outcomeOf(partTestPiecesWhereWorth(right, request)),
    fixtures: await outcomeOf(makeFixtures(request, kinds)),
  };
}

async function plansOf(right: Part, asked: PackWishes, kinds: readonly FixtureKind[]) {
  const { makePartPlan } = await import('../engine/sheet/plan/make-plan.js');
  return makePartPlan(right, { ...asked, kinds });
}

/** Judges the part for its plans here; the second thread draws them. */
async function plansBy(helper: Helper, right: Part, asked: PackWishes, kinds: readonly FixtureKind[]): Promise<readonly Promise<MadePlan>[]> {
  const { planGroundsFor } = await import('../engine/sheet/plan/make-plan.js');
  return (await planGroundsFor(right, { ...asked, kinds })).map((ground) => {
    helper.order({ kind: 'plan', ground, asked });
    return unwatched(answered(helper, 'plan').then(({ plan }) => plan));
  });
}

/** Chooses the fixtures here while the second thread prints them. */
async function fixturesOf(helper: Helper, right: Part, asked: PackWishes, kinds: readonly FixtureKind[]): Promise<readonly MadeFixtureDocument[]> {
  const [{ chooseFixtures }, { setDocument }, { loadKernel }] = await Promise.all([
    import('../engine/sheet/fixture/choose-fixtures.js'),
    import('../engine/sheet/fixture/set-document.js'),
    import('../engine/solid/kernel.js'),
  ]);
  let told: Part | undefined;
  const hands = chooseFixtures(await loadKernel(), right, asked, kinds, (chosen, part) => {
    if (told !== part) helper.order({ kind: 'work', part, asked });
    told = part;
    helper.order({ kind: 'fixture', chosen });
  });
  const documents: MadeFixtureDocument[] = [];
  for (const hand of hands) {
    const own = [];
    for (const made of hand.own.map(() => answered(helper, 'fixture'))) own.push((await made).fixture);
    documents.push(setDocument(hand, own.map(({ record }) => record), asked), ...own);
  }
  return documents;
}

/** The next answer of the second thread, which is of the kind that was asked for. */
function answered<K extends PackAnswer['kind']>(helper: Helper, kind: K): Promise<Extract<PackAnswer, { readonly kind: K }>> {
  const isThat = (answer: PackAnswer): answer is Extract<PackAnswer, { readonly kind: K }> => answer.kind === kind;
  return unwatched(
    helper.next().then((answer) => {
      if (!isThat(answer)) throw new Error(`the second thread answered "${answer.kind}" where it was asked for ${kind}`);
      return answer;
    }),
  );
}

/** What came of some work, or the mistake in it, to be told when its turn comes. */
async function outcomeOf<T>(work: Promise<T>): Promise<() => Promise<T>> {
  await work.catch(() => undefined);
  return () => work;
}
