import type { PartGenerator } from '../engine/part/generator.js';
import type { ScaleReport } from '../engine/plan/scaled/report.js';
import type { LengthUnit } from '../engine/units/length.js';
import type { MadeScaleSheets } from '../engine/sheet/scaled/make-scale-sheets.js';
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
  const { scaleReport } = await import('../engine/plan/scaled/report.js');
  return { job, unit, report: await scaleReport({ ...job, shop: choices.shop, unit }) };
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

/** Writes the sheets of a scaled part: its report, and the prints if they are wanted. @returns their paths. */
export async function writeScaled(made: ScaledReport, choices: PrintChoices, formats: readonly Format[], folder: string, prints: boolean): Promise<readonly string[]> {
  const files: NamedFile[] = [...(await filesOf([await scaleSheetsOf(made, choices)], formats))];
  if (prints) {
    const { makePrint } = await import('../engine/sheet/make-print.js');
    const { generator, values } = made.job;
    files.push(...(await filesOf(await makePrint({ ...wishesOf(choices), generator, values, hand: choices.hand }), formats)));
  }
  return writeFiles(folder, files);
}
