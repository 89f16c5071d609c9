import { checkGenerator } from '../../engine/part/check-generator.js';
import type { Part } from '../../engine/part/part.js';
import { resolveValues } from '../../engine/part/resolve.js';

/** A built-in part with its default values. */
export async function builtInPart(name: string): Promise<Part> {
  const path = new URL(`../../generators/parts/${name}.ts`, import.meta.url).href;
  const module = (await import(path)) as { readonly default: unknown };
  const generator = checkGenerator(module.default, name);
  return generator.build(resolveValues(generator, {}, undefined));
}
