import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PartGenerator } from '../../../engine/part/generator.js';
import { resolveValues } from '../../../engine/part/resolve.js';
import { scaleValues, type SeriesAsked, type ValuesByName } from '../../../engine/part/scaling/index.js';
import { solidOf } from '../../../engine/solid/build.js';
import { loadKernel } from '../../../engine/solid/kernel.js';
import { overlapOfMoved } from '../../../engine/solid/overlap.js';
import { UserError } from '../../../engine/units/user-error.js';
import { builtInGenerator } from '../../support/built-in-generator.js';
import { builtInNames } from '../../support/built-in-names.js';

const generators = await Promise.all((await builtInNames()).map(async (name) => [name, await builtInGenerator(name)] as const));
const byName = (name: string): PartGenerator => generators.find(([own]) => own === name)![1];
const scaled = (name: string, factor: number, series?: SeriesAsked): ValuesByName => scaleValues(byName(name), resolveValues(byName(name), {}, undefined), factor, { series }).values as ValuesByName;
const factors = fc.integer({ min: 500, max: 4000 }).map((thousandths) => thousandths / 1000);

/** Parts that share a parameter share the very object. */
const shared = generators.flatMap(([name, generator]) =>
  Object.entries(generator.parameters).flatMap(([parameter, object]) =>
    generators.filter(([other, theirs]) => other > name && theirs.parameters[parameter] === object).map(([other]) => [name, other, parameter] as const),
  ),
);

describe('what mates', () => {
  it('is there, and says so', () => {
    expect(shared.map(([, , parameter]) => parameter).sort()).toEqual(['bodyWidth', 'headDiameter', 'pinDiameter']);
    for (const [name, , parameter] of shared) expect(byName(name).parameters[parameter]).toHaveProperty('mate');
  });

  it.each(shared)('%s and %s have the same %s at any size, in any series', (one, other, parameter) => {
    fc.assert(
      fc.property(factors, fc.constantFrom<SeriesAsked | undefined>(undefined, 'metric', 'unified'), (factor, asked) => {
        expect(scaled(one, factor, asked)[parameter]).toBe(scaled(other, factor, asked)[parameter]);
      }),
      { seed: 63, numRuns: 60 },
    );
  });

  it('a size that is shared is the same in both, even where one of them alone cannot be made', () => {
    // BA ends at 6 mm: larger crossheads have no thread for their rod, while the pin may.
    expect(() => scaled('crosshead', 1.2, 'ba')).toThrow(UserError);
    expect(scaled('crosshead-pin', 1.2, 'ba')['pinDiameter']).toBe(scaled('crosshead', 1.2)['pinDiameter']);
  });
});

describe('the pin in its crosshead', async () => {
  const kernel = await loadKernel();
  const segments = 64;

  /** How much metal both would take with the pin so far beyond its seat, mm: its head from the outer cheek, along the cross bore. */
  function bothTake(factor: number, beyond: number): { readonly thickness: number; readonly volume: number; readonly play: number; readonly ring: number } {
    const [body, pin] = [scaled('crosshead', factor), scaled('crosshead-pin', factor)];
    const [still, moving] = [byName('crosshead').build(body), byName('crosshead-pin').build(pin)].map((part) => solidOf(kernel, part, { segments }));
    const at = (name: string, values: ValuesByName): number => values[name] as number;
    const motion = {
      matrix: [[0, 0, -1], [0, 1, 0], [1, 0, 0]] as const,
      shift: [at('bodyWidth', body) / 2 + at('headLand', pin) - beyond, 0, at('pinPosition', body)] as const,
    };
    const ring = (Math.PI / 4) * (at('headDiameter', pin) ** 2 - at('pinDiameter', pin) ** 2);
    return { ...overlapOfMoved(kernel, moving!, motion, still!), play: still!.facetError + moving!.facetError, ring };
  }

  it('goes home at any size, to its seat and no further', () => {
    fc.assert(
      fc.property(factors, (factor) => {
        const home = bothTake(factor, 0);
        // Facets of equal rounds that are turned against each other bite no deeper than both are off.
        expect(home.thickness).toBeLessThanOrEqual(2 * home.play);
        // Beyond its seat the cone bites all round: the ring that the seat covers, as deep as the pin goes too far.
        const deep = 0.1 * factor;
        expect((bothTake(factor, deep).volume - home.volume) / (home.ring * deep)).toBeCloseTo(1, 1);
      }),
      { seed: 65, numRuns: 6, examples: [[0.5], [1], [1.45], [4]] },
    );
  });
});
