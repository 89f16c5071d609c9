import { resolveValues } from '../../engine/part/resolve.js';
import { makePlan, type MadePlan } from '../../engine/sheet/plan/make-plan.js';
import { generatorOf, type PrintOptions } from './print.js';

/** Makes the plans of a built-in part: both hands, on the usual paper, unless asked otherwise. */
export async function makePlansOf(name: string, options: PrintOptions = {}): Promise<readonly MadePlan[]> {
  const generator = await generatorOf(name);
  const { settings = {}, ...asked } = options;
  return makePlan({ generator, values: resolveValues(generator, settings, undefined), hand: 'both', units: undefined, paper: undefined, scale: undefined, angle: 'third', ...asked });
}

const made = new Map<string, Promise<readonly MadePlan[]>>();

/** As makePlansOf, each made once in a file of tests. */
export function plansOf(name: string, options: PrintOptions = {}): Promise<readonly MadePlan[]> {
  const key = JSON.stringify([name, options]);
  const known = made.get(key) ?? makePlansOf(name, options);
  made.set(key, known);
  return known;
}
