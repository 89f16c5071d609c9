import type { PartGenerator } from '../engine/part/generator.js';
import type { ScaleReport } from '../engine/plan/scaled/report.js';
import type { LengthUnit } from '../engine/units/length.js';
import type { MadeScaleSheets } from '../engine/sheet/scaled/make-scale-sheets.js';
import { asFarAsCan } from './as-far-as-can.js';
import { collectFixtures } from './collect-fixtures.js';
import { documentsOf } from './documents-of-part.js';
import type { PrintChoices } from './print-choices.js';
import { filesOf, type Format } from './print-files.js';
import { wishesOf } from './print-request.js';
import { scaledJob, type ScaleAsked, type ScaledJob } from './scaled-job.js';
import { scaleFileText } from './scale-file.js';
import { writeFiles, type NamedFile } from './write-files.js';

/** A scaled part with its report. */
export interface ScaledReport {
  readonly job: ScaledJob;
  readonly report: ScaleReport;
  readonly unit: LengthUnit;
}

/** Scales a part and works out what that does. The engine is loaded only now. */
export async function scaleReportOf(generator: PartGenerator, choices: PrintChoices, asked: Pick<ScaleAsked, 'to' | 'from' | 'series'>): Promise<ScaledReport> {
  const job = scaledJob(generator, { ...choices, ...asked });
  const unit = choices.units ?? generator.build(job.original.values).units;
  const [{ scaleReport }, { fixtureChanges }, kinds] = await Promise.all([import('../engine/plan/scaled/report.js'), import('../engine/sheet/scaled/fixture-changes.js'), collectFixtures()]);
  const report = await scaleReport({ ...job, shop: choices.shop, unit });
  const fixtures = await fixtureChanges(job.original.generator.build(job.original.values), job.generator.build(job.values), { unit, shop: choices.shop, kinds });
  return { job, unit, report: { ...report, work: { ...report.work, fixtures } } };
}

/** Writes what was decided beside the job; nothing where nothing was. @returns its path, where there is one. */
export async function keepScaleFile({ original, kept, file }: ScaledJob, to: string): Promise<string | undefined> {
  if (kept.from === undefined && kept.series === undefined && Object.keys(kept.set).length === 0) return undefined;
  await writeFiles('.', [{ name: file, content: scaleFileText(original.generator.name, to, kept) }]);
  return file;
}

/** The sheets of a scaled part's report, with old and new side by side. */
export async function scaleSheetsOf({ job, report, unit }: ScaledReport, choices: PrintChoices): Promise<MadeScaleSheets> {
  const { makeScaleSheets } = await import('../engine/sheet/scaled/make-scale-sheets.js');
  return makeScaleSheets({ ...wishesOf(choices), generator: job.generator, values: job.values, original: job.original, report, unit });
}

/** What was written of a scaled part, and what could not be made, in sentences. */
export interface WrittenScaled {
  readonly paths: readonly string[];
  readonly leftOut: readonly string[];
}

/**
 * Writes the sheets of a scaled part: its report, and if they are wanted its prints, plan, test piece and fixtures. Test piece
 * and fixtures are help only: where one of them cannot be made at that size it is left out, and told.
 * @throws UserError where the part itself cannot be printed or planned.
 */
export async function writeScaled(made: ScaledReport, choices: PrintChoices, formats: readonly Format[], folder: string, prints: boolean): Promise<WrittenScaled> {
  const { leftOut, orNone } = asFarAsCan();
  const files: NamedFile[] = [...(await filesOf([await scaleSheetsOf(made, choices)], formats))];
  if (prints) {
    const { generator, values } = made.job;
    const { prints, plans, pieces, fixtures } = await documentsOf({ ...wishesOf(choices), generator, values, hand: choices.hand });
    const documents = [prints, plans, await orNone(async () => (await pieces()).made), await orNone(fixtures)];
    for (const made of documents) files.push(...(await filesOf(made, formats)));
  }
  return { paths: await writeFiles(folder, files), leftOut };
}
