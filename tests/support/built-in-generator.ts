import type { PartGenerator } from '../../engine/part/generator.js';

/** A built-in part's generator. */
export const builtInGenerator = async (name: string): Promise<PartGenerator> =>
  ((await import(new URL(`../../generators/parts/${name}.ts`, import.meta.url).href)) as { readonly default: PartGenerator }).default;
