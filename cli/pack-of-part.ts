import type { PartGenerator } from '../engine/part/generator.js';
import { resolveValues } from '../engine/part/resolve.js';
import type { MadePack } from '../engine/sheet/pack/make-pack.js';
import type { PrintChoices } from './print-part.js';

/** All sheets of a part in one. The engine is loaded only now. */
export async function packPart(generator: PartGenerator, choices: PrintChoices): Promise<MadePack> {
  const { settings, shop, ...asked } = choices;
  const values = resolveValues(generator, settings, choices.units, shop?.drills);
  const { makePack } = await import('../engine/sheet/pack/make-pack.js');
  return makePack({ generator, values, ...asked, ...(shop === undefined ? {} : { shop }) });
}
