import type { Phrase } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import type { FixtureKind } from '../../plan/fixture/fixture.js';
import type { Drawing, DrawingSheet } from '../drawing.js';
import { makePrint, partOf, type MadePrint, type PrintRequest } from '../make-print.js';
import type { MadeFixtureDocument } from '../fixture/fixture-document.js';
import { makeFixtures } from '../fixture/make-fixture.js';
import type { FixtureRecord, FixtureSetRecord } from '../fixture/fixture-record.js';
import { partTestPiecesWhereWorth, type TestPieces } from '../make-test-piece.js';
import { wordSheets } from '../pages/word-sheets.js';
import { makePartPlan, type MadePlan } from '../plan/make-plan.js';
import type { PlanRecord } from '../plan/plan-record.js';
import type { PrintRecord } from '../print-record.js';
import type { PrintWishes } from '../print-wishes.js';
import { bound } from './bound.js';
import { measuredSections } from './measured-sections.js';
import { contentsSections, type PackDocument } from './pack-contents.js';

/** Everything of a part in one drawing, its records beside it. */
export interface MadePack {
  readonly drawing: Drawing;
  readonly record: PackRecord;
  readonly fileStem: string;
}

/** A document's own record; of a set of fixtures a list, that of the set first. */
type PackedRecord = PrintRecord | PlanRecord | readonly (FixtureSetRecord | FixtureRecord)[] | null;

/** What a pack holds, for programs: where each document begins, and the documents' own records. */
export interface PackRecord {
  readonly format: 'trialpiece pack record';
  readonly version: 1;
  readonly part: string;
  readonly pages: number;
  readonly documents: readonly { readonly name: string; readonly firstPage: number; readonly pages: number; readonly record: PackedRecord }[];
}

interface Bound extends PackDocument {
  readonly drawing: Drawing;
  readonly record: PackedRecord;
}

/**
 * Binds the prints of all hands, their plans, the test pieces, the fixtures and a sheet for measured values.
 * @param kinds of fixtures from which they are picked.
 * @param more sheets that stand first: what was done to the part before.
 * @throws UserError as these do.
 */
export async function makePack(request: PrintRequest, kinds: readonly FixtureKind[], more: readonly Extra[] = []): Promise<MadePack> {
  return packOf(partOf(request), request, await makeDocuments(request, kinds), more);
}

/** Makes all documents of a part, one after another. Throws UserError as these do. */
export async function makeDocuments(request: PrintRequest, kinds: readonly FixtureKind[]): Promise<PartDocuments> {
  const right = partOf(request);
  const prints = await makePrint(request);
  const plans = await makePartPlan(right, { ...request, kinds });
  const pieces = await partTestPiecesWhereWorth(right, request);
  return { prints, plans, pieces, fixtures: await makeFixtures(request, kinds) };
}

/** A document that stands before the others. */
export interface Extra {
  readonly name: string;
  readonly drawing: Drawing;
}

/** The documents of a part. */
export interface PartDocuments {
  readonly prints: readonly MadePrint[];
  readonly plans: readonly MadePlan[];
  readonly pieces: TestPieces;
  readonly fixtures: readonly MadeFixtureDocument[];
  /** Why there are no fixtures, where they could not be made. */
  readonly noFixtures?: string;
}

/**
 * Binds documents that are made already.
 * @param part the right hand.
 */
export function packOf(part: Part, request: PrintWishes, { prints, plans, pieces, fixtures, noFixtures }: PartDocuments, more: readonly Extra[] = []): MadePack {
  const handed = prints[0]!.record.hand !== 'none';
  const documents: readonly Bound[] = [
    ...more.map(({ name, drawing }): Bound => ({ name, sheets: drawing.sheets.length, operations: new Map(), drawing, record: null })),
    ...prints.map((made) => printDocument('Shop print', made)),
    ...plans.map((made) => planDocument('Plan', made)),
    ...pieces.made.map((made) => printDocument('Test piece', made)),
    ...fixtureDocuments(fixtures),
    measuredDocument(part, request, handed),
  ];
  const lacks = [
    ...(pieces.none === undefined ? [] : [`No test piece: ${firstClause(pieces.none)}.`]),
    ...(noFixtures === undefined ? [] : [`No fixtures: ${firstClause(noFixtures)}.`]),
  ];
  return bind(part, request, documents, lacks, handed);
}

/** What is wrong, without what might be asked for instead. */
const firstClause = (sentence: string): string => sentence.replace(/;.*$/, '').replace(/\.$/, '');

const handWord = (hand: string): string => (hand === 'none' ? '' : `, ${hand} hand`);

const printDocument = (kind: string, { drawing, record }: MadePrint): Bound => ({
  name: `${kind}${handWord(record.hand)}`,
  sheets: drawing.sheets.length,
  operations: new Map(record.operations.map(({ number, sheet }) => [number, sheet])),
  drawing,
  record,
});

const planDocument = (kind: string, { drawing, record }: MadePlan): Bound => ({
  name: `${kind}${handWord(record.hand)}`,
  sheets: drawing.sheets.length,
  operations: new Map(record.operations.map(({ number, sheet }) => [number, sheet])),
  drawing,
  record,
});

/** All fixtures of a hand as one document; what serves both hands stands with the first. */
function fixtureDocuments(made: readonly MadeFixtureDocument[]): readonly Bound[] {
  const hands = [...new Set(made.map(({ record }) => record.hand))];
  return hands.flatMap((hand): readonly Bound[] => {
    const own = made.filter(({ record }) => record.hand === hand);
    if (own.length < 2) return [];
    const operations = new Map<number, number>();
    let first = 1;
    for (const { drawing, record } of own) {
      if ('need' in record) for (const number of record.need.operations) if (!operations.has(number)) operations.set(number, first);
      first += drawing.sheets.length;
    }
    const sheets = own.flatMap(({ drawing }) => drawing.sheets);
    return [{ name: `Fixtures${handWord(hand)}`, sheets: sheets.length, operations, drawing: { ...own[0]!.drawing, sheets }, record: own.map(({ record }) => record) }];
  });
}

function measuredDocument(part: Part, request: PrintWishes, handed: boolean): Bound {
  const sheets = wordSheets(part, request, 'measured values', measuredSections(part, handed), handed);
  return { name: 'Measured values', sheets: sheets.length, operations: new Map(), drawing: { title: 'Measured values', subject: '', keywords: [], sheets }, record: null };
}

function bind(part: Part, request: PrintWishes, documents: readonly Bound[], lacks: readonly string[], handed: boolean): MadePack {
  const remarks: readonly Phrase[] = [
    ['Pages are numbered through the pack, under the frame; the sheet numbers in the title blocks count each document by itself.'],
    ...lacks.map((lack): Phrase => [lack]),
  ];
  const operations = part.operations.map(({ number, title }) => ({ number, title }));
  const contentsOf = (pages: number): readonly DrawingSheet[] => wordSheets(part, request, 'contents', contentsSections(documents, operations, pages, remarks), handed);
  const pages = contentsOf(1).length;
  const contents = contentsOf(pages);
  const all = [{ name: 'Contents', sheets: contents }, ...documents.map(({ name, drawing }) => ({ name, sheets: drawing.sheets }))];
  let page = contents.length + 1;
  const recorded = documents.map(({ name, sheets, record }) => {
    const firstPage = page;
    page += sheets;
    return { name, firstPage, pages: sheets, record };
  });
  const sheets = bound(all);
  return {
    drawing: { title: `${part.title}: bench pack`, subject: `All sheets of the ${part.title.toLowerCase()} for ${part.engine}`, keywords: [part.name, part.material.name, 'bench pack'], sheets },
    record: { format: 'trialpiece pack record', version: 1, part: part.name, pages: sheets.length, documents: recorded },
    fileStem: `${part.name}-pack`,
  };
}
