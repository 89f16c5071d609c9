import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseAngle } from '../../engine/units/angle.js';
import { parseLength } from '../../engine/units/length.js';
import { UserError } from '../../engine/units/user-error.js';

const fault = (read: () => unknown): string => {
  try {
    read();
  } catch (error) {
    expect(error).toBeInstanceOf(UserError);
    return (error as Error).message;
  }
  return 'no error';
};

describe('a length', () => {
  // The inch is 25.4 mm exactly (international yard and pound agreement, 1959).
  it.each([
    ['5/16 in', 7.9375],
    ['1 1/2 in', 38.1],
    ['1-1/2"', 38.1],
    ['0.3125in', 7.9375],
    ['.25 in', 6.35],
    ['10 thou', 0.254],
    ['2.5mm', 2.5],
    ['2.5 mm', 2.5],
    ['2.5 MM', 2.5],
    ['-1 1/2 in', -38.1],
    ['25 um', 0.025],
    ['4 cm', 40],
    ['1 ft', 304.8],
    ['1 inch', 25.4],
  ])('%s', (text, mm) => {
    expect(parseLength(text)).toBe(mm);
  });

  it('takes the unit offered for a bare number only', () => {
    expect(parseLength('1/4', { unit: 'in' })).toBe(6.35);
    expect(parseLength('1/4', { unit: 'mm' })).toBe(0.25);
    expect(parseLength('6 mm', { unit: 'in' })).toBe(6);
  });

  it.each([
    ['5', 'bore "5" has no unit: write 5 mm or 5 in (allowed are mm, in (or "), thou, um, cm, m or ft).'],
    ['5 furlong', 'bore "5 furlong" has the unknown unit "furlong": allowed are mm, in (or "), thou, um, cm, m or ft.'],
    ['5 inc', 'bore "5 inc" has the unknown unit "inc": allowed are mm, in (or "), thou, um, cm, m or ft; the nearest is in.'],
    ['2,5 mm', 'bore "2,5" is not a number: write the decimals behind a point, not a comma.'],
    ['1/0 in', 'bore "1/0" divides by nought.'],
    ['NaN', 'bore "NaN" is not a length: write a number and a unit (mm, in (or "), thou, um, cm, m or ft), such as 5/16 in or 2.5 mm.'],
    ['', 'bore "" is not a length: write a number and a unit (mm, in (or "), thou, um, cm, m or ft), such as 5/16 in or 2.5 mm.'],
    ['1 2 mm', 'bore "1 2" is not a number (12, 0.25, 5/16 and 1 1/2 are understood).'],
  ])('refuses %j in a sentence', (text, sentence) => {
    expect(fault(() => parseLength(text, { what: 'bore' }))).toBe(sentence);
  });

  it('refuses a sign that makes no sense', () => {
    expect(fault(() => parseLength('-3 mm', { what: 'drill', sign: 'positive' }))).toBe('drill "-3 mm" must be more than nought.');
    expect(fault(() => parseLength('-3 mm', { what: 'depth', sign: 'not-negative' }))).toBe('depth "-3 mm" must not be negative.');
    expect(parseLength('0 mm', { sign: 'not-negative' })).toBe(0);
  });

  it('reads every 64th of an inch exactly, however it is written', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 64 * 12 }), (count) => {
        const whole = Math.floor(count / 64);
        const mm = (count * 25.4) / 64;
        expect(parseLength(`${count}/64 in`)).toBeCloseTo(mm, 12);
        expect(parseLength(`${whole} ${count % 64}/64"`)).toBeCloseTo(mm, 12);
        expect(parseLength(`${count / 64} in`)).toBeCloseTo(mm, 12);
      }),
      { seed: 1 },
    );
  });
});

describe('an angle', () => {
  it.each([
    ['15', 15],
    ['15 deg', 15],
    ["5° 45'", 5.75],
    ['5°45\'30"', 5.758333333333334],
    ['-1 1/2 deg', -1.5],
    ['47.5°', 47.5],
  ])('%s', (text, degrees) => {
    expect(parseAngle(text)).toBeCloseTo(degrees, 12);
  });

  it('refuses what is no angle', () => {
    expect(fault(() => parseAngle('0.5 rad'))).toBe('angle "0.5 rad" is not an angle: write degrees, such as 15, 5.75 deg or 5° 45\'.');
    expect(fault(() => parseAngle("5° 60'"))).toBe('angle "5° 60\'" has 60 or more minutes or seconds.');
  });
});
