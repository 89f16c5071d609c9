import type { Part } from '../../engine/part/part.js';
import type { ChosenFixture } from '../../engine/sheet/fixture/chosen-fixture.js';
import type { FixtureRecord, FixtureSetRecord } from '../../engine/sheet/fixture/fixture-record.js';
import type { PrintWishes } from '../../engine/sheet/print-wishes.js';
import type { Format } from '../print-files.js';
import type { NamedFile } from '../write-files.js';

/** A document of fixtures as it is written: its files, and its record. */
export interface PrintedFixtures<Record = FixtureRecord | FixtureSetRecord> {
  readonly record: Record;
  readonly files: readonly NamedFile[];
}

/** What the second thread is told: the work whose fixtures come next, then each of them. It answers with the print of each. */
export type FixtureOrder =
  | { readonly kind: 'work'; readonly part: Part; readonly wishes: PrintWishes; readonly formats: readonly Format[]; readonly inSet: boolean }
  | { readonly kind: 'fixture'; readonly chosen: ChosenFixture };
