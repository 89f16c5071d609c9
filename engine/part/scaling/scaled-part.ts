import { barToBuy } from '../bar-to-buy.js';
import type { Phrase } from '../cut.js';
import type { PartGenerator } from '../generator.js';
import type { Parameters } from '../parameters.js';
import type { Part } from '../part.js';
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
      return { ...part, kin: { of: part.name, mark: plainSize(factor).replaceAll('-', '') }, name: nameFor(part.name, factor), engine: engineFor(part.engine, factor), notes: [...part.notes, ...barNotes(part)] };
    },
  };
}

/** What is said of bar that is not sold in the size of the blank. */
function barNotes(part: Part): readonly Phrase[] {
  const { section, sold, asSold } = barToBuy(part);
  if (asSold) return [];
  const size = section.flatMap((side, i): Phrase => (i === 0 ? [{ length: side }] : [' x ', { length: side }]));
  return [['Bar of ', ...size, sold === undefined ? ' is in no list: cut it from plate, or order it.' : ` is not sold: bring ${sold} down to it first.`]];
}
