import type { PartGenerator } from '../generator.js';
import type { Parameters } from '../parameters.js';
import type { Factor } from './factor.js';

/** A size in letters, digits and hyphens. */
const plainSize = ({ label }: Factor): string => label.toLowerCase().replace(/in$/, '').replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '');

/** A part of another size keeps its name with the size behind it, so that its files do not take the place of others. */
const nameFor = (name: string, factor: Factor): string => `${name}-${plainSize(factor)}`;

/** The engine's line with the gauge or scale for which the part is now. */
const engineFor = (engine: string, { title }: Factor): string => `${engine.split(',')[0] ?? engine}, ${title}`;

/** The generator whose parts say for which size they are; at the same size it is the same. */
export function scaledPart<P extends Parameters>(generator: PartGenerator<P>, factor: Factor): PartGenerator<P> {
  if (factor.value === 1) return generator;
  return {
    ...generator,
    build: (values) => {
      const part = generator.build(values);
      return { ...part, kin: { of: part.name, mark: plainSize(factor).replaceAll('-', '') }, name: nameFor(part.name, factor), engine: engineFor(part.engine, factor) };
    },
  };
}
