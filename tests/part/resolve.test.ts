import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PartGenerator } from '../../engine/part/generator.js';
import { resolveValues } from '../../engine/part/resolve.js';
import { UserError } from '../../engine/units/user-error.js';
import { sample } from './sample-generator.js';

const resolve = (settings: Record<string, string>, units?: 'in' | 'mm') => resolveValues(sample, settings, units);

function refusal(settings: Record<string, string>, units?: 'in' | 'mm'): string {
  try {
    resolve(settings, units);
  } catch (error) {
    expect(error).toBeInstanceOf(UserError);
    return (error as Error).message;
  }
  throw new Error('nothing was refused');
}

describe('values', () => {
  it('are the defaults where nothing is set, in mm, degrees and counts', () => {
    const values = resolve({});
    expect(values.length).toBe(38.1);
    expect(values.bore).toBe(7.9375);
    expect(values.gap).toBe(0.1);
    expect(values.bar).toBe(19.05);
    expect(values.bevel).toBe(30);
    expect(values.holes).toBe(4);
    expect(values.end).toBe('rounded');
  });

  it('hold the thread and the drill of the tables', () => {
    const values = resolve({ screw: 'M3', oilHole: '1/16 in' });
    // ISO 261: M3 has a major diameter of 3 mm and a coarse pitch of 0.5 mm.
    expect([values.screw.major, values.screw.pitch]).toEqual([3, 0.5]);
    expect(values.oilHole.diameter).toBe(1.5875);
  });

  it.each([
    ['1/4 in', 6.35],
    ['.25in', 6.35],
    ['250 thou', 6.35],
    ['6.35 mm', 6.35],
    ['1/8 in', 3.175],
    ['1/2"', 12.7],
  ])('read a bore of %s', (text, mm) => {
    expect(resolve({ bore: text }).bore).toBe(mm);
  });

  it('take a number alone in the units asked for', () => {
    expect(resolve({ bore: '1/4' }, 'in').bore).toBe(6.35);
    expect(resolve({ bore: '6' }, 'mm').bore).toBe(6);
    expect(resolve({ oilHole: '1.5' }, 'mm').oilHole.diameter).toBe(1.5);
  });

  it('leave defaults alone in whatever units the user works', () => {
    expect(resolve({}, 'mm')).toEqual(resolve({}, 'in'));
  });
});

describe('refusals', () => {
  it.each<[string, Record<string, string>, 'in' | 'mm' | undefined, string]>([
    ['an unknown parameter', { bor: '6 mm' }, undefined, 'sample-block has no parameter "bor": it has length, bore, gap, bar, screw, oilHole, bevel, holes, end; the nearest is bore.'],
    ['a name that objects have by nature', { constructor: '1 in' }, undefined, 'sample-block has no parameter "constructor": it has length, bore, gap, bar, screw, oilHole, bevel, holes, end.'],
    ['no number', { bore: 'wide' }, undefined, 'bore "wide" is not a length: write a number and a unit (mm, in (or "), thou, um, cm, m or ft), such as 5/16 in or 2.5 mm.'],
    ['no unit', { bore: '0.25' }, undefined, 'bore "0.25" has no unit: write 0.25 mm or 0.25 in (allowed are mm, in (or "), thou, um, cm, m or ft).'],
    ['a wrong unit', { bore: '6 kg' }, undefined, 'bore "6 kg" has the unknown unit "kg": allowed are mm, in (or "), thou, um, cm, m or ft; the nearest is mm.'],
    ['a length for an angle', { bevel: '6 mm' }, undefined, 'bevel "6 mm" is not an angle: write degrees, such as 15, 5.75 deg or 5° 45\'.'],
    ['a length for a count', { holes: '4 mm' }, undefined, 'holes "4 mm" is not a whole number: write a count, such as 4.'],
    ['part of a count', { holes: '4.5' }, undefined, 'holes "4.5" is not a whole number: write a count, such as 4.'],
    ['too little, limit as declared', { bore: '1/16 in' }, undefined, 'bore "1/16 in" is less than this part allows: at least 1/8 in.'],
    ['too much, limit in the user\'s unit', { bore: '13 mm' }, undefined, 'bore "13 mm" is more than this part allows: at most 1/2 in (12.7 mm).'],
    ['a metric limit told in inches', { gap: '.1' }, 'in', 'gap ".1" is more than this part allows: at most 0.5 mm (.0197 in).'],
    ['too steep', { bevel: '61' }, undefined, 'bevel "61" is more than this part allows: at most 60°.'],
    ['too many', { holes: '14' }, undefined, 'holes "14" is more than this part allows: at most 12.'],
    ['too thick a screw', { screw: 'M8' }, undefined, 'screw "M8" is more than this part allows: at most 1/4 in (6.35 mm).'],
    ['too small a drill', { oilHole: '#80' }, undefined, 'oilHole "#80" is less than this part allows: at least #70.'],
    ['a drill without a unit', { oilHole: '1.5' }, undefined, 'oilHole: drill "1.5" has no unit: write 1.5 mm or 1.5 in, or a drill\'s name such as #53 or F.'],
    ['a bar that is not sold', { bar: '0.7 in' }, undefined, 'bar "0.7 in" is no size in which round stock is sold: the nearest are .6875 in and .750 in.'],
    ['a metric bar that is not sold', { bar: '21 mm' }, undefined, 'bar "21 mm" is no size in which round stock is sold: the nearest are 20 mm and 22 mm.'],
    ['an unknown choice', { end: 'rounde' }, undefined, 'end "rounde" is not one of its choices: there are rounded, square; the nearest is rounded.'],
    ['a broken relation, in the unit of what was set', { bar: '14 mm', bore: '10 mm' }, undefined, 'a wall must remain about the bore: bore and two walls (16.000 mm) must be at most bar (14.000 mm).'],
    ['a broken relation, in the part\'s unit', { holes: '3' }, undefined, 'the holes go round in pairs: holes over a pair (1) must be equal to none (0).'],
    ['a strict relation at its bound', { bevel: '45' }, undefined, 'the cutter leans no further: bevel (45.00°) must be less than the lean of the cutter (45.00°).'],
    ['several at once, the first told', { bor: '6 mm', holes: '14', end: 'x' }, undefined, 'sample-block has no parameter "bor": it has length, bore, gap, bar, screw, oilHole, bevel, holes, end; the nearest is bore (and 2 more problems).'],
  ])('%s', (_, settings, units, sentence) => {
    expect(refusal(settings, units)).toBe(sentence);
  });

  it('an unknown thread, naming the parameter and the nearest', () => {
    expect(refusal({ screw: '4-41' })).toMatch(/^screw: thread "4-41" is not in the tables .*; the nearest is 4-40\b.*\.$/);
  });

  it('an unknown drill, naming the parameter and the nearest', () => {
    expect(refusal({ oilHole: '1/63 in' })).toMatch(/^oilHole: drill "1\/63 in" is not in the tables; the nearest is .*\.$/);
  });

  it('sides that differ by less than the usual decimals show, with more', () => {
    const close = { bar: '19.05 mm', bore: '12.7 mm' };
    const tight: PartGenerator<typeof sample.parameters> = {
      ...sample,
      relations: ({ bar }) => [{ says: 'close', left: { text: 'a', value: bar + 0.0002 }, is: '<=', right: { text: 'bar', value: bar }, measure: 'length' }],
    };
    expect(() => resolveValues(tight, close, undefined)).toThrow(new UserError('close: a (19.0502 mm) must be at most bar (19.0500 mm).'));
  });
});

it('takes just the lengths between the limits, whatever the notation', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 80 }), fc.constantFrom('in', 'thou', 'mm'), (sixtyFourths, unit) => {
      // A 64th of an inch is 0.396875 mm exactly, so that six decimals say it in full.
      const inches = sixtyFourths / 64;
      const text = unit === 'in' ? `${String(sixtyFourths)}/64 in` : unit === 'thou' ? `${String(inches * 1000)} thou` : `${(inches * 25.4).toFixed(6)} mm`;
      const allowed = sixtyFourths >= 8 && sixtyFourths <= 32;
      if (allowed) expect(resolve({ bore: text, bar: '2 in' }).bore).toBeCloseTo(inches * 25.4, 12);
      else expect(refusal({ bore: text, bar: '2 in' })).toMatch(/^bore ".*" is (less|more) than this part allows: at (least 1\/8|most 1\/2) in/);
    }),
    { seed: 20, numRuns: 200 },
  );
});

it('a thread as large as the limit is within it, however both were reckoned', () => {
  // 0-80 is 0.060 in; in binary its millimetres come out a hair below those of the limit.
  const screw = { kind: 'thread', label: 'screw', default: '0-80', minimum: '0.06 in', maximum: '1/4 in' } as const;
  const part: PartGenerator<{ readonly screw: typeof screw }> = { name: sample.name, title: sample.title, summary: sample.summary, parameters: { screw }, relations: () => [], build: () => sample.build(resolveValues(sample, {}, undefined)) };
  expect(resolveValues(part, {}, undefined).screw.designation).toMatch(/^0-80/);
});
