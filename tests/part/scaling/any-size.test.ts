import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkPart } from '../../../engine/part/check-part.js';
import type { PartGenerator } from '../../../engine/part/generator.js';
import { holds } from '../../../engine/part/relation.js';
import { resolveValues } from '../../../engine/part/resolve.js';
import { scaleValues, sizeOf, type Scaled, type ScaleLine, type SeriesAsked, type ValuesByName } from '../../../engine/part/scaling/index.js';
import { piecesOf } from '../../../engine/solid/connected.js';
import { loadKernel, type Kernel } from '../../../engine/solid/kernel.js';
import { volumeOf } from '../../../engine/solid/measure.js';
import { soundSolid } from '../../../engine/solid/sound-solid.js';
import { endMillSizes } from '../../../engine/trade/data/cutter-sizes.js';
import { reamerSizes } from '../../../engine/trade/data/centre-drills.js';
import { drills, type Drill } from '../../../engine/trade/drills.js';
import { threads, type Thread } from '../../../engine/trade/threads.js';
import { parseLength } from '../../../engine/units/length.js';
import { UserError } from '../../../engine/units/user-error.js';
import { builtInGenerator } from '../../support/built-in-generator.js';
import { builtInNames } from '../../support/built-in-names.js';
import { unpairedEdges, worstVertex } from '../../support/solid-checks.js';

const generators = await Promise.all((await builtInNames()).map(async (name) => [name, await builtInGenerator(name)] as const));
const defaults = (generator: PartGenerator) => resolveValues(generator, {}, undefined);
const scaled = (generator: PartGenerator, factor: number, series?: SeriesAsked): Scaled => scaleValues(generator, defaults(generator), factor, { series });

const factors = fc.integer({ min: 500, max: 4000 }).map((thousandths) => thousandths / 1000);
let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

/** Sizes of the lists beside the one that was chosen, as the tables have them; undefined where the line follows no such list. */
function rivals({ rule, mended, fixed, half }: ScaleLine, value: unknown): readonly number[] | undefined {
  if (mended !== undefined || fixed === true || half === undefined) return undefined;
  const listed = (list: string): readonly number[] => list.split(' ').map((text) => parseLength(text, { unit: 'in' }));
  switch (rule) {
    case 'thread': {
      const { series } = value as Thread;
      // Of metric and BA threads only those that shops have.
      return series.startsWith('unified-fine') || series.startsWith('unified-coarse') || series.startsWith('model') ? threads.filter((thread) => thread.series === series).map(({ major }) => major) : undefined;
    }
    case 'drill':
      return drills.filter(({ series }) => (series === 'metric') === ((value as Drill).series === 'metric')).map(({ diameter }) => diameter);
    case 'reamer':
      return listed(reamerSizes.in);
    case 'end mill':
      return listed(endMillSizes.in);
    default:
      return undefined;
  }
}

describe.each(generators)('%s at any size', (_, generator) => {
  it('can be made, keeps its relations, and no size is put further than half the step of its list', () => {
    fc.assert(
      fc.property(factors, (factor) => {
        const { values, lines } = scaled(generator, factor);
        expect(generator.relations(values).filter((relation) => !holds(relation))).toEqual([]);
        for (const line of lines) {
          if (line.half !== undefined) expect(Math.abs(line.deviation), line.parameter).toBeLessThanOrEqual(line.half + 1e-6);
          for (const rival of rivals(line, values[line.parameter]) ?? []) expect(Math.abs(rival - line.exact.size!), `${line.parameter} ${String(rival)}`).toBeGreaterThanOrEqual(Math.abs(line.deviation) - 1e-5);
        }
      }),
      { seed: 60, numRuns: 80, examples: [[0.5], [0.6], [0.75], [3], [4]] },
    );
  });

  it('can be made in metric and in Unified threads too, and in BA as far as they reach', () => {
    fc.assert(
      fc.property(factors, fc.constantFrom<SeriesAsked>('metric', 'unified', 'ba'), (factor, series) => {
        let made: Scaled;
        try {
          made = scaled(generator, factor, series);
        } catch (error) {
          // BA ends at 6 mm.
          expect(error).toBeInstanceOf(UserError);
          expect((error as Error).message).toMatch(/^at [\d.]+ times its size the [\w-]+ cannot be made: \w+ \(.*\) would be [\d.]+ mm, and the series ba has no thread near it: its largest is 0 BA.*; fix what you can with --set\.$/);
          expect(series).toBe('ba');
          return;
        }
        expect(generator.relations(made.values).filter((relation) => !holds(relation))).toEqual([]);
        const words: Readonly<Record<string, RegExp>> = { metric: /^(metric|miniature)/, unified: /^unified/, ba: /^british/ };
        for (const value of Object.values(made.values as ValuesByName)) if (typeof value === 'object' && 'major' in value) expect(value.series).toMatch(words[series]!);
      }),
      { seed: 64, numRuns: 60, examples: [[0.5, 'metric'], [0.5, 'unified'], [4, 'metric'], [4, 'unified']] },
    );
  });

  it('is one closed piece of metal, about as many times as heavy as the cube of the factor says', () => {
    const before = volumeOf(soundSolid(kernel, generator.build(defaults(generator)), { segments: 16 }));
    fc.assert(
      fc.property(factors, (factor) => {
        const part = generator.build(scaled(generator, factor).values);
        expect(checkPart(part, generator.name)).toBe(part);
        const solid = soundSolid(kernel, part, { segments: 16 });
        expect(unpairedEdges(solid)).toBe(0);
        expect(piecesOf(solid)).toBe(1);
        expect(worstVertex(solid)).toBeLessThanOrEqual(solid.facetError + 1e-5);
        const times = volumeOf(solid) / before / factor ** 3;
        // Bought sizes, walls and allowances are off by up to a fifth each.
        expect(times).toBeGreaterThan(0.6);
        expect(times).toBeLessThan(1.6);
      }),
      { seed: 61, numRuns: 8, examples: [[0.5], [4]] },
    );
  });

  it('is unchanged by the same size', () => {
    const values = defaults(generator);
    const { values: same, lines } = scaleValues(generator, values, 1);
    expect(same).toEqual(values);
    expect(lines.every(({ deviation, decision, mended }) => deviation === 0 && decision === undefined && mended === undefined)).toBe(true);
  });

  it('made another size and back again is the original, or tells exactly what is not', () => {
    fc.assert(
      fc.property(factors, (factor) => {
        const values = defaults(generator) as ValuesByName;
        const there = scaled(generator, factor);
        const back = scaleValues(generator, there.values, 1 / factor);
        // Put to a list, sold with another, moved by a relation, counted again, or in proportion to something that was.
        const told = new Set([...there.lines, ...back.lines].filter(({ half, mended, decision, rule, because }) => half !== undefined || mended !== undefined || decision !== undefined || /with /.test(rule) || because.startsWith('worked out again')).map(({ parameter }) => parameter));
        for (const [name, value] of Object.entries(back.values as ValuesByName)) {
          if (told.has(name)) continue;
          const [was, is] = [sizeOf(values[name]!), sizeOf(value)];
          if (was === undefined) expect(value).toBe(values[name]);
          else expect(Math.abs(is! - was), `${name} ${String(was)} ${String(is)}`).toBeLessThanOrEqual(1e-5);
        }
      }),
      { seed: 62, numRuns: 25, examples: [[1.45], [0.7], [2], [0.5], [4]] },
    );
  });
});
