import { describe, expect, it } from 'vitest';
import { definePart, type PartGenerator } from '../../../engine/part/generator.js';
import { resolveValues } from '../../../engine/part/resolve.js';
import { scaleValues, type ValuesByName } from '../../../engine/part/scaling/index.js';
import { builtInGenerator } from '../../support/built-in-generator.js';
import { builtInNames } from '../../support/built-in-names.js';

const generators = await Promise.all((await builtInNames()).map(async (name) => [name, await builtInGenerator(name)] as const));
const byName = (name: string): PartGenerator => generators.find(([own]) => own === name)![1];
const defaults = (generator: PartGenerator) => resolveValues(generator, {}, undefined);

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
