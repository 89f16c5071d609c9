import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { definePart, type PartGenerator } from '../../../engine/part/generator.js';
import { holds } from '../../../engine/part/relation.js';
import { resolveValues } from '../../../engine/part/resolve.js';
import { scaleValues, sizeOf, type Scaled, type SeriesAsked, type ValuesByName } from '../../../engine/part/scaling/index.js';
import { loadKernel, type Kernel } from '../../../engine/solid/kernel.js';
import { volumeOf } from '../../../engine/solid/measure.js';
import { soundSolid } from '../../../engine/solid/sound-solid.js';
import { UserError } from '../../../engine/units/user-error.js';
import { builtInGenerator } from '../../support/built-in-generator.js';
import { builtInNames } from '../../support/built-in-names.js';

const generators = await Promise.all((await builtInNames()).map(async (name) => [name, await builtInGenerator(name)] as const));
const byName = (name: string): PartGenerator => generators.find(([own]) => own === name)![1];
const defaults = (generator: PartGenerator) => resolveValues(generator, {}, undefined);

/** Scaled; undefined where the part cannot be made at that size, which must be said in a sentence. */
function scaledOrRefused(generator: PartGenerator, factor: number, series?: SeriesAsked): Scaled | undefined {
  try {
    return scaleValues(generator, defaults(generator), factor, { series });
  } catch (error) {
    expect(error).toBeInstanceOf(UserError);
    expect((error as Error).message).toMatch(/^at [\d.]+ times its size the [\w-]+ cannot be made: .*\.$/);
    return undefined;
  }
}

const factors = fc.integer({ min: 500, max: 4000 }).map((thousandths) => thousandths / 1000);
const series = fc.constantFrom<SeriesAsked | undefined>(undefined, undefined, 'metric', 'ba', 'unified');
let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

describe.each(generators)('%s at any size', (_, generator) => {
  it('keeps its relations, and no size is put further than half the step of its list', () => {
    let made = 0;
    fc.assert(
      fc.property(factors, series, (factor, asked) => {
        const scaled = scaledOrRefused(generator, factor, asked);
        if (scaled === undefined) return;
        made += 1;
        expect(generator.relations(scaled.values).filter((relation) => !holds(relation))).toEqual([]);
        for (const line of scaled.lines) if (line.half !== undefined) expect(Math.abs(line.deviation), line.parameter).toBeLessThanOrEqual(line.half + 1e-6);
      }),
      { seed: 60, numRuns: 60 },
    );
    expect(made).toBeGreaterThan(15);
  });

  it('is a sound solid, about as many times as heavy as the cube of the factor says', () => {
    const before = volumeOf(soundSolid(kernel, generator.build(defaults(generator)), { segments: 16 }));
    fc.assert(
      fc.property(factors, (factor) => {
        const scaled = scaledOrRefused(generator, factor);
        if (scaled === undefined) return;
        const after = volumeOf(soundSolid(kernel, generator.build(scaled.values), { segments: 16 }));
        // Bought sizes, walls and allowances are off by up to a fifth each.
        expect(after / before / factor ** 3).toBeGreaterThan(0.6);
        expect(after / before / factor ** 3).toBeLessThan(1.6);
      }),
      { seed: 61, numRuns: 8 },
    );
  });

  it('is unchanged by the same size', () => {
    const values = defaults(generator);
    const { values: same, lines } = scaleValues(generator, values, 1);
    expect(same).toEqual(values);
    expect(lines.every(({ deviation, decision, mended }) => deviation === 0 && decision === undefined && mended === undefined)).toBe(true);
  });

  it('made larger and smaller again is the original, or tells exactly what is not', () => {
    fc.assert(
      fc.property(fc.constantFrom(1.45, 1.5, 2, 1.25, 1.6), (factor) => {
        const values = defaults(generator) as ValuesByName;
        const up = scaledOrRefused(generator, factor);
        if (up === undefined) return;
        let back: Scaled;
        try {
          back = scaleValues(generator, up.values, 1 / factor);
        } catch (error) {
          expect(error).toBeInstanceOf(UserError);
          return;
        }
        const told = new Set([...up.lines, ...back.lines].filter((line) => line.half !== undefined || line.mended !== undefined || line.decision !== undefined || line.rule.startsWith('with ')).map(({ parameter }) => parameter));
        for (const [name, value] of Object.entries(back.values as ValuesByName)) {
          if (told.has(name)) continue;
          const [was, is] = [sizeOf(values[name]!), sizeOf(value)];
          if (was === undefined) expect(value).toBe(values[name]);
          else expect(is, name).toBeCloseTo(was, 5);
        }
      }),
      { seed: 62, numRuns: 5 },
    );
  });
});

describe('what mates', () => {
  /** Parts that share a parameter share the very object. */
  const shared = generators.flatMap(([name, generator]) =>
    Object.entries(generator.parameters).flatMap(([parameter, object]) =>
      generators.filter(([other, theirs]) => other > name && theirs.parameters[parameter] === object).map(([other]) => [name, other, parameter] as const),
    ),
  );

  it('is there, and says so', () => {
    expect(shared.map(([, , parameter]) => parameter).sort()).toEqual(['bodyWidth', 'headDiameter', 'pinDiameter']);
    for (const [name, , parameter] of shared) expect(byName(name).parameters[parameter]).toHaveProperty('mate');
  });

  it.each(shared)('%s and %s have the same %s at any size, in any series', (one, other, parameter) => {
    let both = 0;
    fc.assert(
      fc.property(factors, series, (factor, asked) => {
        const [a, b] = [scaledOrRefused(byName(one), factor, asked), scaledOrRefused(byName(other), factor, asked)];
        if (a === undefined || b === undefined) return;
        both += 1;
        expect((a.values as ValuesByName)[parameter]).toBe((b.values as ValuesByName)[parameter]);
      }),
      { seed: 63, numRuns: 60 },
    );
    expect(both).toBeGreaterThan(20);
  });
});

describe('choices and refusals', () => {
  const crosshead = byName('crosshead');
  it('what is fixed stays fixed, and is told so', () => {
    const { values, lines } = scaleValues(crosshead, defaults(crosshead), 1.45, { fixed: { padThread: '4-40', pocketWidth: '0.38 in' } });
    expect((values as ValuesByName)['pocketWidth']).toBeCloseTo(9.652, 9);
    expect(lines.find(({ parameter }) => parameter === 'padThread')).toMatchObject({ chosen: { name: '4-40 UNC' }, fixed: true, rule: 'as set' });
  });
  it('a choice that nothing can be mended round is refused: which relation, by how much', () =>
    expect(() => scaleValues(crosshead, defaults(crosshead), 1.45, { fixed: { length: '1 in' } })).toThrow(
      'at 1.45 times its size the crosshead cannot be made: the pin lies inside the body: pin position, head radius and a wall (1.8425 in) must be at most length over all (1.0000 in), it is short by .8425 in, and no small change of its other sizes mends it.',
    ));
  it('a part that is too small names the relation', () => {
    const nut = byName('gland-nut');
    expect(() => scaleValues(nut, defaults(nut), 0.3)).toThrow(/^at 0\.3 times its size the gland-nut cannot be made: the flats keep a wall over the groove: groove and two walls \(\.2117 in\) must be at most across flats \(\.1563 in\), it is short by \.0554 in, and no small change/);
  });
  it('an unknown parameter is named', () => expect(() => scaleValues(crosshead, defaults(crosshead), 2, { fixed: { lenght: '1 in' } })).toThrow(/^crosshead has no parameter "lenght": .*; the nearest is length\.$/));
  it('a series with no size near is named', () => expect(() => scaleValues(crosshead, defaults(crosshead), 2, { series: 'ba' })).toThrow(/rodThread \(1\/4x40 ME\) would be 12\.700 mm, and the series ba has no thread near it/));

  it('more screws are taken where their threads come out weak and there is room', () => {
    // 0-80 at 0.7 is 1.067 mm; 14 BA of 1.0 mm holds 14 % less: 5 hold what 4 exactly scaled would.
    const { values, lines } = scaleValues(crosshead, defaults(crosshead), 0.7, { series: 'ba' });
    expect((values as ValuesByName)['padCount']).toBe(5);
    expect((values as ValuesByName)['padPitch']).toBeCloseTo((0.7 * 6.35 * 3) / 4, 5);
    expect(lines.find(({ parameter }) => parameter === 'padCount')!.decision).toContain('set padCount=4 to keep the look');
  });
  it('and kept where a spanner has no room, with the reason', () => {
    const { values, lines } = scaleValues(crosshead, defaults(crosshead), 1.1);
    expect((values as ValuesByName)['padCount']).toBe(4);
    expect(lines.find(({ parameter }) => parameter === 'padCount')!.decision).toMatch(/^5 would hold as much, .* but at a pitch of 5\.24 mm a spanner and nut of 5\.28 mm have no room$/);
  });
});

describe('mending', () => {
  const bar = (wall: string) => definePart({
    name: 'ring', title: 'Ring', summary: 'A ring.',
    parameters: {
      outside: { kind: 'length', label: 'outside', default: '10 mm', minimum: '1 mm', maximum: '50 mm' },
      bore: { kind: 'length', label: 'bore', default: '7 mm', minimum: '1 mm', maximum: '50 mm' },
      far: { kind: 'length', label: 'something else', default: '7 mm', minimum: '1 mm', maximum: '50 mm' },
      wall: { kind: 'wall', label: 'least wall', default: wall, minimum: '0.1 mm', maximum: '5 mm' },
    },
    relations: (p) => [{ says: 'a wall stays', left: { text: 'bore and two walls', value: p.bore + 2 * p.wall }, is: '<=', right: { text: 'outside', value: p.outside }, measure: 'length' }],
    build: () => { throw new Error('not built'); },
  });

  it('lowers the least wall first, no further than it must, and moves nothing else', () => {
    // At a half 3.5 + 2 x 1.2 is 5.9 against 5: the wall comes to 0.75.
    const ring = bar('1.2 mm');
    const { values, lines } = scaleValues(ring, resolveValues(ring, {}, undefined), 0.5);
    expect(values).toEqual({ outside: 5, bore: 3.5, far: 3.5, wall: 0.75 });
    expect(lines.find(({ parameter }) => parameter === 'wall')!.mended).toEqual(['a wall stays']);
  });

  it('moves the size of which it takes the least part, where the wall may go no lower', () => {
    // At a fifth: wall down to 0.3, bore 1.4 + 0.6 = 2 just fits; at 0.15 the wall stays 0.3: 1.05 + 0.6 against 1.5.
    const ring = bar('1.4 mm');
    expect(scaleValues(ring, resolveValues(ring, {}, undefined), 0.2).values).toEqual({ outside: 2, bore: 1.4, far: 1.4, wall: 0.3 });
    const { values } = scaleValues(ring, resolveValues(ring, {}, undefined), 0.15);
    // 0.15 mm are a tenth of the outside and a seventh of the bore: the outside gives way.
    expect(values).toEqual({ outside: 1.65, bore: 1.05, far: 1.05, wall: 0.3 });
  });

  it('gives the same answer each time', () => {
    const crosshead = byName('crosshead');
    expect(scaleValues(crosshead, defaults(crosshead), 0.55)).toEqual(scaleValues(crosshead, defaults(crosshead), 0.55));
  });
});
