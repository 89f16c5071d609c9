import type { PartGenerator } from '../../part/generator.js';
import type { Parameters, Values } from '../../part/parameters.js';
import type { Part } from '../../part/part.js';
import type { ScaleReport } from '../../plan/scaled/report.js';
import { solidOf } from '../../solid/build.js';
import { loadKernel } from '../../solid/kernel.js';
import type { LengthUnit } from '../../units/length.js';
import type { Drawing } from '../drawing.js';
import { wordSheets } from '../pages/word-sheets.js';
import type { PrintWishes } from '../print-wishes.js';
import { outsidePlans } from './outside-block.js';
import { reportSections } from './report-sections.js';
import { sideBySide, type Shown } from './side-by-side.js';

/** A scaled part with its report, for sheets. */
export interface ScaleSheetsRequest extends PrintWishes {
  readonly original: { readonly generator: PartGenerator; readonly values: Values<Parameters> };
  readonly generator: PartGenerator;
  readonly values: Values<Parameters>;
  readonly report: ScaleReport;
  readonly unit: LengthUnit;
}

/** The sheets of a scaling, with its record for programs. */
export interface MadeScaleSheets {
  readonly drawing: Drawing;
  readonly record: ScaleReport;
  readonly fileStem: string;
}

/** Old and new side by side at one scale, then the report. Throws UserError where they find no room. */
export async function makeScaleSheets(request: ScaleSheetsRequest): Promise<MadeScaleSheets> {
  const kernel = await loadKernel();
  const shown = (part: Part, id: string): Shown => ({ part, plans: outsidePlans(part, solidOf(kernel, part), id) });
  const before = request.original.generator.build(request.original.values);
  const after = request.generator.build(request.values);
  const words = wordSheets(after, request, 'scaling', reportSections(request.report, request.unit), false, 2);
  const beside = sideBySide(shown(before, 'before'), shown(after, 'after'), request, words.length + 1);
  return {
    drawing: { title: `${after.title}: scaling`, subject: `${before.engine} to ${after.engine}`, keywords: [after.name, 'scaling'], sheets: [beside, ...words] },
    record: request.report,
    fileStem: `${after.name}-scaling`,
  };
}
