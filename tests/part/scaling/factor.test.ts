import { describe, expect, it } from 'vitest';
import { factorOf, gauges, labelOf, readTarget } from '../../../engine/part/scaling/index.js';
import { UserError } from '../../../engine/units/user-error.js';
import { published } from '../../published/read-csv.js';

const engine = 'Tormentil, 5 inch gauge';
const refusal = (to: string, from?: string): string => {
  try {
    factorOf({ to, from, engine });
  } catch (error) {
    expect(error).toBeInstanceOf(UserError);
    return (error as Error).message;
  }
  throw new Error(`${to} was not refused`);
};

describe('gauges and scales', () => {
  // Read on a live-steam standards page, as printed there.
  it.each(published('railway-gauges').map((row) => [row.text('gauge_name'), row] as const))('%s in is as published', (_, row) => {
    const gauge = gauges.find(({ size }) => Math.abs(size - row.number('gauge_in') * 25.4) < 0.02);
    // The page prints whole millimetres for some gauges.
    expect(Math.abs(gauge!.size - row.number('gauge_mm_published'))).toBeLessThanOrEqual(0.5);
    const perFoot = readTarget(`${row.text('scale_in_per_ft')} in/ft`, '--to');
    expect(perFoot.kind).toBe('scale');
    const scales = gauge!.scales.map((scale) => scale.perFoot);
    if (perFoot.kind === 'scale') expect(scales.some((each) => Math.abs(each - perFoot.scale.perFoot) < 1e-9)).toBe(true);
  });

  it.each([
    ['7.25in', '5 in', 1.45],
    ['7-1/4 in', undefined, 1.45],
    ['3.5 in', '5in', 0.7],
    ['127 mm', '3-1/2 in', 5 / 3.5],
    ['gauge 1', '5 in', 45 / 127],
    ['7.25 in gauge', '3.5 in', 7.25 / 3.5],
  ])('to %s from %s is the ratio of the gauges', (to, from, factor) => {
    expect(factorOf({ to, from, engine }).by).toBe('gauge');
    expect(factorOf({ to, from, engine }).value).toBeCloseTo(factor, 12);
  });

  it('the three ways differ by what they say', () => {
    const { ways } = factorOf({ to: '7.25 in', engine });
    // 1-1/2 to 1 in and to 1-1/16 in to the foot: 1.5 and 1.41176, against 1.45.
    expect(ways.map(({ by, factor }) => [by, Number(factor.toFixed(5))])).toEqual([['gauge', 1.45], ['scale', 1.5], ['scale', 1.41176]]);
    expect(ways[1]!.percent).toBeCloseTo(3.4483, 4);
    expect(ways[2]!.percent).toBeCloseTo(-2.6369, 4);
    // 3/4 to 1-1/16 is 1.4167, the gauges 1.4286.
    expect(factorOf({ to: '5 in', from: '3.5 in' }).ways.find(({ says }) => says.startsWith('1-1/16'))!.factor).toBeCloseTo(1.41667, 5);
  });

  it('a scale to the foot, and a plain factor, tell the gauge that they come to', () => {
    expect(factorOf({ to: '1.5in/ft', from: '1-1/16 in/ft' })).toMatchObject({ by: 'scale', title: '1.5in/ft' });
    expect(factorOf({ to: '1.5in/ft', from: '1-1/16 in/ft' }).value).toBeCloseTo(24 / 17, 12);
    expect(factorOf({ to: 'x1.5', engine }).ways[1]).toMatchObject({ by: 'gauge', says: '5 in x 1.5 is a gauge of 7.5 in' });
    expect(factorOf({ to: '50%', engine }).value).toBe(0.5);
    expect(factorOf({ to: '29/20', engine }).value).toBeCloseTo(1.45, 12);
  });

  it('names files by what it is scaled to', () => expect(['7-1/4in', '1-1/2 in/ft', '1.45'].map((to) => labelOf(readTarget(to, '--to')))).toEqual(['7.25in', '1-1-2in-ft', 'x1.45']));
});

describe('what is no gauge', () => {
  it.each([
    ['8 in', '--to "8 in" is no gauge that is known: there are gauge 0, gauge 1, 2-1/2 in, 3-1/2 in, 4-3/4 in, 5 in, 7-1/4 in, 7-1/2 in, 10-1/4 in, 15 in; the nearest is 7-1/2 in; or write a gauge (5 in), a scale (1-1/16 in/ft) or a factor (1.45).'],
    ['wide gauge', '--to "wide gauge" is no gauge that is known: there are gauge 0, gauge 1, 2-1/2 in, 3-1/2 in, 4-3/4 in, 5 in, 7-1/4 in, 7-1/2 in, 10-1/4 in, 15 in; the nearest is gauge 0; or write a gauge (5 in), a scale (1-1/16 in/ft) or a factor (1.45).'],
    ['60', '--to "60" makes a part 60 times as large: a factor from 0.1 to 10 is taken; a gauge is written with its unit, as in 7.25 in.'],
    ['0', '--to "0" makes a part 0 times as large: a factor from 0.1 to 10 is taken; a gauge is written with its unit, as in 7.25 in.'],
  ])('%s is refused', (to, sentence) => expect(refusal(to)).toBe(sentence));

  it('a gauge of two scales is not taken without asking', () =>
    expect(refusal('1.5in/ft')).toBe('--from "5 in": the gauge 5 in is built in several scales, 1 in to the foot and 1-1/16 in to the foot: give the scale, as in --from "1 in/ft".'));
  it('a factor is no place to start from', () => expect(refusal('5 in', '1.2')).toBe('--from "1.2" is a factor: give the gauge or the scale that the part is for, as in --from "5 in".'));
  it('a part that does not say its gauge needs --from', () => expect(() => factorOf({ to: '5 in', engine: 'a toy' })).toThrow('the part does not say for which gauge it is: give a factor itself, as in 1.45, or tell scale with --from, a gauge or a scale, as in --from "5 in".'));
});
