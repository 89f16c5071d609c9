import type { PartGenerator } from '../engine/part/generator.js';
import { resolveValues } from '../engine/part/resolve.js';
import type { Job } from './job.js';
import type { PrintChoices } from './print-choices.js';
import { scaledJob } from './scaled-job.js';

/**
 * The part and its values as a command line asks for them: the one place where they come from. Where a gauge is asked for,
 * the part is scaled to it, with what was fixed for that in the file beside the job; settings are then of the scaled part.
 * @throws UserError for settings that are wrong, an unknown gauge, and a part that cannot be made at that size.
 */
export function valuesOf(generator: PartGenerator, choices: Pick<PrintChoices, 'settings' | 'units' | 'shop' | 'gauge'>): Job {
  if (choices.gauge === undefined) return { generator, values: resolveValues(generator, choices.settings, choices.units, choices.shop?.drills) };
  const { generator: scaled, values } = scaledJob(generator, { ...choices, to: choices.gauge });
  return { generator: scaled, values };
}
