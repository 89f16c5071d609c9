import { checkGenerator } from '../../engine/part/check-generator.js';
import type { PartGenerator } from '../../engine/part/generator.js';
import type { Part } from '../../engine/part/part.js';
import { mirrorPart } from '../../engine/part/mirror.js';
import { resolveValues } from '../../engine/part/resolve.js';
import { makePrint, type MadePrint, type PrintRequest } from '../../engine/sheet/make-print.js';
import { builtInPart } from './built-in-part.js';

export const printedParts = ['crosshead', 'crosshead-pin'] as const;

export type PrintOptions = Partial<Omit<PrintRequest, 'generator' | 'values'>> & { readonly settings?: Readonly<Record<string, string>> };

/** The generator of a built-in part. */
export async function generatorOf(name: string): Promise<PartGenerator> {
  const path = new URL(`../../generators/parts/${name}.ts`, import.meta.url).href;
  const module = (await import(path)) as { readonly default: unknown };
  return checkGenerator(module.default, name);
}

/** Makes the prints of a built-in part: on A3, both hands, unless asked otherwise. */
export async function makePrintsOf(name: string, options: PrintOptions = {}): Promise<readonly MadePrint[]> {
  const generator = await generatorOf(name);
  const { settings = {}, ...asked } = options;
  return makePrint({
    generator,
    values: resolveValues(generator, settings, undefined),
    hand: 'both',
    units: undefined,
    paper: 'A3',
    scale: undefined,
    angle: 'third',
    ...asked,
  });
}

const made = new Map<string, Promise<readonly MadePrint[]>>();

/** As makePrintsOf, each made once in a file of tests. */
export function printsOf(name: string, options: PrintOptions = {}): Promise<readonly MadePrint[]> {
  const key = JSON.stringify([name, options]);
  const known = made.get(key) ?? makePrintsOf(name, options);
  made.set(key, known);
  return known;
}

/** The part that a print shows, with its default values. */
export async function partShown(print: MadePrint): Promise<Part> {
  const part = await builtInPart(print.record.part);
  return print.record.hand === 'left' ? mirrorPart(part) : part;
}
