import type { PartGenerator } from '../engine/part/generator.js';
import { resolveValues } from '../engine/part/resolve.js';
import { factorOf, labelOf, readTarget, scaledPart, scaleValues, type Factor, type Scaled, type SeriesAsked } from '../engine/part/scaling/index.js';
import type { Job } from './job.js';
import type { PrintChoices } from './print-choices.js';
import { readScaleFile, scaleFileName, type ScaleFile } from './scale-file.js';

export interface ScaleAsked extends Pick<PrintChoices, 'settings' | 'units' | 'shop'> {
  readonly to: string;
  readonly from?: string | undefined;
  readonly series?: SeriesAsked | undefined;
}

/** A scaled part, with all that the scaling of it told. */
export interface ScaledJob extends Job, Scaled {
  readonly original: Job;
  readonly factor: Factor;
  readonly series: SeriesAsked | undefined;
  /** The choices that hold for it, and the name of the file that they are kept in. */
  readonly kept: ScaleFile;
  readonly file: string;
}

/**
 * Scales a part from its defaults, with what the file of that part and size fixes; the command line goes before the file.
 * @throws UserError as factorOf, readScaleFile and scaleValues do.
 */
export function scaledJob(generator: PartGenerator, asked: ScaleAsked): ScaledJob {
  const { settings, units, shop } = asked;
  const file = scaleFileName(generator.name, labelOf(readTarget(asked.to, '--to')));
  const known = readScaleFile(file);
  const kept: ScaleFile = { from: asked.from ?? known.from, series: asked.series ?? known.series, set: { ...known.set, ...settings } };
  const values = resolveValues(generator, {}, undefined, shop?.drills);
  const factor = factorOf({ to: asked.to, from: kept.from, engine: generator.build(values).engine });
  const scaled = scaleValues(generator, values, factor.value, { series: kept.series, fixed: kept.set, unit: units });
  return { generator: scaledPart(generator, factor), ...scaled, original: { generator, values }, factor, series: kept.series, kept, file };
}
