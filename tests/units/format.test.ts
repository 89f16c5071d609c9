import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatAngle, formatDeviation, formatLength } from '../../engine/units/format.js';
import { parseLength } from '../../engine/units/length.js';
import { roundTo } from '../../engine/units/rounding.js';

describe('a length on a print', () => {
  it.each([
    [6.35, '.250', '6.35'],
    [25.4 / 64, '.0156', '0.397'],
    [7.9375, '.3125', '7.938'],
    [1.6, '.063', '1.6'],
    [0, '.000', '0'],
    [-1e-9, '.000', '0'],
    [-6.35, '-.250', '-6.35'],
    [3.175, '.125', '3.175'],
    [38.1, '1.500', '38.1'],
    [8.012, '.3154', '8.012'],
    [100, '3.937', '100'],
  ])('%d mm', (mm, inches, millimetres) => {
    expect(formatLength(mm, 'in')).toBe(inches);
    expect(formatLength(mm, 'mm')).toBe(millimetres);
  });

  it('keeps the decimals asked for', () => {
    expect(formatLength(6.35, 'mm', 3)).toBe('6.350');
    expect(formatLength(6.35, 'in', 4)).toBe('.2500');
    expect(formatLength(12.7, 'in', 0)).toBe('1');
  });

  it('rounds halves away from nought though binary sums leave them a hair low', () => {
    expect(1.005 * 1000).toBeLessThan(1005);
    expect(formatLength(1.005, 'mm', 2)).toBe('1.01');
    expect(formatLength(-1.005, 'mm', 2)).toBe('-1.01');
    expect(formatLength(0.1 + 0.2, 'mm', 1)).toBe('0.3');
    expect(formatLength(25.4 * 0.0625, 'in', 3)).toBe('.063');
  });

  it('refuses what is not finite', () => {
    expect(() => formatLength(Number.NaN, 'mm')).toThrow(RangeError);
    expect(() => formatLength(Infinity, 'in')).toThrow('cannot write Infinity as a number');
  });

  it('reads back within half of the last place', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 500, noNaN: true }), fc.constantFrom('in' as const, 'mm' as const), fc.integer({ min: 1, max: 5 }), (mm, unit, decimals) => {
        const back = parseLength(`${formatLength(mm, unit, decimals)} ${unit}`);
        expect(Math.abs(back - mm)).toBeLessThanOrEqual((0.500002 * (unit === 'in' ? 25.4 : 1)) / 10 ** decimals);
      }),
      { seed: 2 },
    );
  });

  it('mirrors: minus a length reads minus its text', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 500, noNaN: true }), (mm) => {
        expect(formatLength(-mm, 'mm')).toBe(`-${formatLength(mm, 'mm')}`);
        expect(roundTo(-mm, 3)).toBe(-roundTo(mm, 3));
      }),
      { seed: 3 },
    );
  });
});

describe('deviations and angles', () => {
  it('carry signs', () => {
    expect(formatDeviation(0.0127, 'in', 4)).toBe('+.0005');
    expect(formatDeviation(-0.012, 'mm', 3)).toBe('-0.012');
    expect(formatDeviation(0, 'mm', 3)).toBe('0');
  });
  it('keep at most two decimals of a degree', () => {
    expect([15, 47.5, 2.8624, 0, -5.755].map(formatAngle)).toEqual(['15°', '47.5°', '2.86°', '0°', '-5.76°']);
  });
});
