import { describe, expect, it } from 'vitest';
import type { LengthParameter, Parameter } from '../../../engine/part/parameters.js';
import { applyRule } from '../../../engine/part/scaling/rules/index.js';
import { nearestOf } from '../../../engine/part/scaling/snap.js';
import { findDrill } from '../../../engine/trade/drills.js';
import { findThread, type Thread } from '../../../engine/trade/threads.js';
import { published } from '../../published/read-csv.js';
import { sizeOf, type SeriesAsked } from '../../../engine/part/scaling/index.js';

const thread = { kind: 'thread', label: 'thread', default: '0-80', minimum: '1 mm', maximum: '20 mm' } as const;
const threadAt = (name: string, factor: number, series?: SeriesAsked) => applyRule({ name: 'screw', parameter: thread, value: findThread(name), factor, series });
const nameAt = (name: string, factor: number, series?: SeriesAsked): string => (threadAt(name, factor, series).value as Thread).designation;

const length = (kind: LengthParameter['kind'], more: Partial<LengthParameter> = {}): LengthParameter => ({ kind, label: 'it', default: '1/4 in', minimum: '0 in', maximum: '9 in', ...more });
const sizeAt = (parameter: Parameter, value: number, factor: number): number => applyRule({ name: 'it', parameter, value, factor, series: undefined }).value as number;

describe('threads', () => {
  // 3-1/2 to 5 in, k = 1.4286: worked from the thread formulas.
  it.each<[string, number, SeriesAsked | undefined, string]>([
    ['8 BA', 5 / 3.5, undefined, '5 BA'], // 2.2 -> 3.14 mm; 5 BA 3.2, 6 BA 2.8
    ['10 BA', 5 / 3.5, undefined, '7 BA'], // 1.7 -> 2.43; 7 BA 2.5, 8 BA 2.2
    ['10 BA', 5 / 3.5, 'metric', 'M2.5x0.45'],
    ['6 BA', 5 / 3.5, 'metric', 'M4x0.7'], // 2.8 -> 4.0
    ['4 BA', 5 / 3.5, 'metric', 'M5x0.8'], // 3.6 -> 5.14
    ['4 BA', 1, 'metric', 'M4x0.7'], // 3.6; M3.5 is no first choice
    ['1/4x40', 5 / 3.5, undefined, '3/8x40 ME'], // 6.35 -> 9.07; 3/8 is 9.525, 5/16 7.94
    ['0-80', 1.45, undefined, '2-64 UNF'], // .087
    ['5-40', 1.45, undefined, '10-24 UNC'], // .181
    ['M3', 2, undefined, 'M6x1'],
    ['1/4-28', 1.5, 'metric', 'M10x1.25'], // its pitch would be 1.36 mm
    ['1/4x40', 1.45, 'metric', 'M10x1'], // 0.92 mm: fine stays fine
  ])('%s x %d in the series %s is %s', (name, factor, series, chosen) => expect(nameAt(name, factor, series)).toBe(chosen));

  it('tells the stress area lost, and what the next larger would cost in looks', () => {
    // 10-32 UNF As 0.0200 in2, 1/4-28 UNF As 0.0364 in2 (ASME B1.1): 0.0364 / (0.0200 x 1.45^2) is 13.4 % short.
    expect(threadAt('10-32', 1.45).decision).toBe('1/4-28 UNF has 13 % less stress area than exact scaling; 5/16-24 UNF would have +38 %, and look 13 % larger');
    expect(threadAt('10-32', 1.45).knockOn).toEqual(['tapping drill 5.6 mm (64 %)', 'clearance drill 9/32 in', 'hexagon .4375 in across flats']);
  });

  it('goes on in a kindred series where its own ends, and says so; a series asked for is kept to', () => {
    expect(nameAt('1/4x40', 2.5)).toBe('5/8 BSB');
    expect(threadAt('1/4x40', 2.5).decision).toContain('the series of 1/4x40 ME has nothing near: 5/8 BSB is taken from another');
    expect(threadAt('1/4x40', 2.5, 'ba').cannot).toBe('screw (1/4x40 ME) would be 15.875 mm, and the series ba has no thread near it: its largest is 0 BA');
    expect(threadAt('0-80', 0.2).cannot).toBe('screw would be 0.305 mm, and the tables of threads run from S0.5 to M52x1.5');
    // A UNF thread of 1.9 in: the series ends at 1-1/2 in. Of all Unified ones of 1-7/8 in the pitch of 6 is nearest to 12 / 1.9.
    expect(nameAt('1-12', 1.9)).toBe('1-7/8-6 UN');
    expect(nameAt('1-12', 1.9, 'unified')).toBe('1-7/8-6 UN');
    // Below No. 0 the modelmakers' 00-90 (.047 in) is nearer to .042 than 000-120 (.034).
    expect(nameAt('0-80', 0.7)).toBe('00-90 UNS');
    expect(nameAt('0-80', 0.5, 'metric')).toBe('S0.8');
  });
});

describe('what is bought or made by a tool', () => {
  it.each([
    ['1/16 in', 1.45, '#43'], // .0906: #43 .089, #42 .0935
    ['#53', 2, '#31'], // .119: .120, and 15/128 is none
    ['2 mm', 1.45, '2.9 mm'],
  ])('a drill %s x %d is a drill of the table', (name, factor, expected) => {
    const parameter = { kind: 'drill', label: 'hole', default: name, minimum: '#80', maximum: '1 in' } as const;
    const outcome = applyRule({ name: 'hole', parameter, value: findDrill(name), factor, series: undefined });
    const chosen = outcome.value as { readonly name: string };
    expect(chosen.name).toBe(expected);
    expect(Math.abs(sizeOf(outcome.value)! - outcome.exact)).toBeLessThanOrEqual(outcome.half! + 1e-9);
  });

  it('no published drill lies nearer than the one taken', () => {
    // Sizes as the standards print them; the tables hold them all.
    const sizes = [...published('drills-number-letter').map((row) => row.number('dia_mm')), ...published('drills-fraction').map((row) => row.number('mm'))];
    const parameter = { kind: 'drill', label: 'hole', default: '#53', minimum: '#80', maximum: '1 in' } as const;
    for (const factor of [0.7, 1.1, 1.45, 2, 3, 4.3]) {
      const { value, exact } = applyRule({ name: 'hole', parameter, value: findDrill('#53'), factor, series: undefined });
      const nearest = Math.min(...sizes.map((size) => Math.abs(size - exact)));
      expect(Math.abs(sizeOf(value)! - exact)).toBeLessThanOrEqual(nearest + 1e-3);
    }
  });

  // Sizes as listed, silver steel too: 1/8 -> 4.54 mm is 11/64, 3/8 -> 13.6 is 9/16, 1/2 -> 18.1 is 11/16.
  it.each([
    [3.175, 4.365625],
    [9.525, 14.2875],
    [12.7, 17.4625],
  ])('round bar of %d mm for 3-1/2 in is %d for 5 in', (before, after) => {
    const bar = { kind: 'stock', form: 'round', label: 'bar', default: '1 in', minimum: '1/16 in', maximum: '3 in' } as const;
    const outcome = applyRule({ name: 'bar', parameter: bar, value: before, factor: 5 / 3.5, series: undefined });
    expect(Math.abs((outcome.value as number) - outcome.exact)).toBeLessThanOrEqual(outcome.half!);
    const listed = published('stock-sizes').filter((row) => row.text('form') === 'round bar' && row.text('size').endsWith('in'));
    expect(listed.length).toBeGreaterThan(8);
    for (const row of listed) expect(Math.abs(row.number('mm') - outcome.exact)).toBeGreaterThanOrEqual(Math.abs(after - outcome.exact) - 0.006);
    expect(outcome.value).toBeCloseTo(after, 6);
  });

  it('bar that stays and is seen to be off is asked about, with the other size', () => {
    const flat = { kind: 'stock', form: 'rectangular', stays: true, label: 'bar', default: '1 in', minimum: '1/16 in', maximum: '3 in' } as const;
    const outcome = applyRule({ name: 'bar', parameter: flat, value: 7.9375, factor: 0.7, series: undefined });
    // 5/16 x 0.7 = .21875: 1/4 is 14 % over, 3/16 14 % under; the larger of two as near.
    expect(outcome.value).toBeCloseTo(6.35, 9);
    expect(outcome.decision).toBe('1/4 in is +14 % against exact scaling, and its faces stay; 3/16 in would be -14 % against exact scaling');
  });

  it.each([
    ['reamer', 6.35, 1.45, 9.525], // .3625: 3/8 .375, 11/32 .344
    ['end mill', 6.35, 5 / 3.5, 9.525], // .357: 3/8, 5/16
    ['corner of an end mill', 2.38125, 1.45, 3.175], // .1359: half of 1/4
    ['ground rod', 3.96875, 1.45, 5.55625], // .2266: 7/32 .21875, 1/4
  ] as const)('what follows a %s takes its size', (follows, before, factor, after) => expect(sizeAt(length('length', { follows }), before, factor)).toBeCloseTo(after, 9));

  it('what no reamer is large enough for is bored, and nobody is asked', () => {
    const outcome = applyRule({ name: 'bore', parameter: length('length', { follows: 'reamer' }), value: 9.525, factor: 4, series: undefined });
    expect(outcome).toMatchObject({ value: 38.1, because: 'bored to size, for no reamer is as large', knockOn: ['the largest listed is 1 in'] });
    expect(outcome.decision).toBeUndefined();
  });

  it('a slot narrower than any cutter cannot be made', () =>
    expect(applyRule({ name: 'slot', parameter: length('length', { follows: 'end mill' }), value: 0.5, factor: 0.3, series: undefined }).cannot).toBe('slot would need 0.150 mm, and the smallest end mill is 1/64 in'));
});

describe('what has a rule of its own', () => {
  it('play grows with the cube root, as tolerances do: 0.03 at 10 mm is 0.034 at 14.3', () => expect(sizeAt(length('clearance'), 0.03, 5 / 3.5)).toBeCloseTo(0.0338, 4));
  it.each([
    [length('allowance'), 0.2],
    [length('wall'), 0.762],
    [length('clearance', { follows: 'edge' }), 0.508],
    [length('length', { follows: 'shop' }), 2.38],
  ])('an allowance, a wall, an edge and the shop’s own tool stay', (parameter, value) => expect(sizeAt(parameter, value, 1.45)).toBe(value));
  it('a length is exact: 180 mm is 257.142857', () => expect(sizeAt(length('length'), 180, 5 / 3.5)).toBe(257.142857));
  it('angles and counts stay', () => {
    expect(sizeAt({ kind: 'angle', label: 'a', default: 30, minimum: 1, maximum: 89 }, 30, 2)).toBe(30);
    expect(sizeAt({ kind: 'count', label: 'n', default: 4, minimum: 1, maximum: 9 }, 4, 2)).toBe(4);
  });
});

describe('the nearest of a list', () => {
  const options = [1, 2, 4].map((size) => ({ size }));
  it.each([
    [1.4, 1, 0.5],
    [1.5, 2, 0.5],
    [2.9, 2, 1],
    [3, 4, 1],
    [4.9, 4, 1],
    [0.6, 1, 0.5],
  ])('%d is %d, within %d', (wanted, size, half) => expect(nearestOf(options, wanted)).toEqual({ option: { size }, half }));
  it('is none beyond the ends by more than half of the last step', () => {
    expect(nearestOf(options, 5.01)).toBeUndefined();
    expect(nearestOf(options, 0.49)).toBeUndefined();
  });
});
