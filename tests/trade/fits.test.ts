import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitLimits, standardTolerance, toleranceMicrometres } from '../../engine/trade/fits.js';
import { deviationSteps, toleranceSteps } from '../../engine/trade/data/iso-286.js';
import { published } from '../published/read-csv.js';

describe('ISO 286 as the standard tabulates it, to the micron', () => {
  it('standard tolerances', () => {
    for (const row of published('iso286-it-grades')) {
      const grade = Number(row.text('grade').slice(2));
      expect(standardTolerance(grade, row.number('to_mm'))).toBe(row.number('tolerance_um'));
      expect(standardTolerance(grade, row.number('over_mm') + 0.001)).toBe(row.number('tolerance_um'));
    }
  });
  it('deviations of the usual classes, at both ends of each step', () => {
    for (const row of published('iso286-deviations')) {
      const limits = { upper: row.number('upper_um'), lower: row.number('lower_um') };
      expect(toleranceMicrometres(row.text('class'), row.number('to_mm')), row.text('class')).toEqual(limits);
      expect(toleranceMicrometres(row.text('class'), row.number('over_mm') + 0.001), row.text('class')).toEqual(limits);
    }
  });
  // ISO 286-2 tables 2 to 15, further classes (memory).
  it.each([
    ['K7', 20, 6, -15],
    ['K6', 8, 2, -7],
    ['N7', 20, -7, -28],
    ['N9', 20, 0, -52],
    ['N9', 2, -4, -29],
    ['P7', 20, -14, -35],
    ['P9', 20, -22, -74],
    ['S7', 70, -48, -78],
    ['M7', 40, 0, -25],
    ['M7', 2, -2, -12],
    ['R7', 8, -13, -28],
    ['J7', 20, 12, -9],
    ['JS7', 20, 10.5, -10.5],
    ['F8', 20, 53, 20],
    ['G7', 20, 28, 7],
    ['D10', 20, 149, 65],
    ['E9', 20, 92, 40],
    ['j6', 20, 9, -4],
    ['k5', 20, 11, 2],
    ['u6', 20, 54, 41],
    ['t6', 28, 54, 41],
    ['c11', 20, -110, -240],
    ['h11', 20, 0, -130],
    ['f8', 5, -10, -28],
    ['g5', 5, -4, -9],
  ] as const)('%s at %d mm', (name, size, upper, lower) => {
    expect(toleranceMicrometres(name, size)).toEqual({ upper, lower });
  });
});

/** The generating formulas of ISO 286-1 annex A: they miss the table below 3 mm, so only larger steps are held to them. */
describe('the generating formulas of ISO 286-1 agree above 3 mm', () => {
  const steps = toleranceSteps.slice(1).map((upTo, index) => ({ upTo, mean: Math.sqrt(upTo * (toleranceSteps[index] ?? 1)) }));
  it('tolerance unit 0.45 cbrt(D) + 0.001 D', () => {
    const parts: Readonly<Record<number, number>> = { 5: 7, 6: 10, 7: 16, 8: 25, 9: 40, 10: 64, 11: 100, 12: 160, 13: 250, 14: 400, 15: 640, 16: 1000 };
    for (const { upTo, mean } of steps) {
      for (const [grade, part] of Object.entries(parts)) {
        const formula = part * (0.45 * Math.cbrt(mean) + 0.001 * mean);
        expect(Math.abs(standardTolerance(Number(grade), upTo) / formula - 1), `IT${grade} to ${upTo}`).toBeLessThan(0.1);
      }
    }
  });
  it('fundamental deviations d to g, and m and n', () => {
    for (const { upTo, mean } of steps) {
      const near = (name: string, formula: number, side: 'upper' | 'lower'): void => {
        expect(Math.abs(toleranceMicrometres(name, upTo)[side] - formula), `${name} to ${upTo}`).toBeLessThanOrEqual(0.5 + Math.abs(formula) * 0.06);
      };
      near('d9', -16 * mean ** 0.44, 'upper');
      near('e8', -11 * mean ** 0.41, 'upper');
      near('f7', -5.5 * mean ** 0.41, 'upper');
      near('g6', -2.5 * mean ** 0.34, 'upper');
      near('n6', 5 * mean ** 0.34, 'lower');
      expect(Math.abs(toleranceMicrometres('m6', upTo).lower - (standardTolerance(7, upTo) - standardTolerance(6, upTo)))).toBeLessThanOrEqual(0);
    }
  });
});

describe('every class', () => {
  const sizes = fc.double({ min: 1.01, max: 250, noNaN: true });
  it('has a width of its standard tolerance', () => {
    fc.assert(
      fc.property(fc.constantFrom(...'abcdefghkmnprsuxz'), fc.integer({ min: 5, max: 11 }), sizes, fc.boolean(), (letter, grade, size, hole) => {
        if (hole && letter === 'k' && grade > 8) return;
        const { upper, lower } = toleranceMicrometres((hole ? letter.toUpperCase() : letter) + grade, size);
        expect(upper - lower).toBeCloseTo(standardTolerance(grade, size), 9);
      }),
      { seed: 5 },
    );
  });
  it('A to H mirror a to h', () => {
    fc.assert(
      fc.property(fc.constantFrom(...'abcdefgh'), fc.integer({ min: 5, max: 11 }), sizes, (letter, grade, size) => {
        const hole = toleranceMicrometres(letter.toUpperCase() + grade, size);
        const shaft = toleranceMicrometres(letter + grade, size);
        expect(hole.lower + shaft.upper).toBeCloseTo(0, 9);
      }),
      { seed: 6 },
    );
  });
  it('grows or stays with size', () => {
    for (const name of ['H7', 'g6', 'p6', 's6', 'u6', 'd9']) {
      const widths = deviationSteps.map((size) => Math.max(...Object.values(toleranceMicrometres(name, size)).map(Math.abs)));
      expect(widths).toEqual([...widths].sort((a, b) => a - b));
    }
  });
});

describe('American fits of ANSI B4.1', () => {
  it('as tabulated, with the clearance or interference that is printed', () => {
    for (const row of published('ansi-b41-fits')) {
      const thou = (mm: number | undefined): number => Math.round(((mm ?? Number.NaN) / 0.0254) * 1000) / 1000 + 0;
      for (const size of [row.number('to_in'), row.number('over_in') + 0.001]) {
        const { hole, shaft, clearance } = fitLimits(row.text('fit'), size * 25.4);
        expect([thou(hole?.upper), thou(hole?.lower), thou(shaft?.upper), thou(shaft?.lower)], row.text('fit')).toEqual(
          ['hole_upper_thou', 'hole_lower_thou', 'shaft_upper_thou', 'shaft_lower_thou'].map(row.number),
        );
        const [least, most] = row.text('allowance_kind') === 'clearance' ? [thou(clearance?.min), thou(clearance?.max)] : [-thou(clearance?.max) + 0, -thou(clearance?.min)];
        expect([least, most]).toEqual([row.number('allowance_min_thou'), row.number('allowance_max_thou')]);
      }
    }
  });
});

/** Clearance least and most, thousandths of an inch, of further classes at the step of half an inch (handbook tables, read). */
describe('further American fits add up to the clearance that is printed', () => {
  it.each([
    ['RC6', 1.2, 3.8],
    ['RC7', 2, 4.6],
    ['RC8', 3.5, 7.9],
    ['RC9', 6, 12.8],
    ['LC6', 0.6, 3.2],
    ['LC7', 1.2, 5.6],
    ['LC8', 2, 6.4],
    ['LC9', 3.5, 10.3],
    ['LC10', 6, 20],
    ['LC11', 8, 28],
    ['LT1', -0.2, 0.9],
    ['LT2', -0.35, 1.35],
    ['LT3', -0.5, 0.6],
    ['LT4', -0.8, 0.9],
    ['LT5', -0.9, 0.2],
    ['LT6', -1.2, 0.2],
    ['LN1', -0.8, 0],
    ['LN3', -1.4, -0.3],
    ['FN4', -1.8, -0.7],
    ['FN5', -2.3, -0.6],
  ])('%s', (name, least, most) => {
    const { clearance } = fitLimits(name, 0.5 * 25.4);
    expect((clearance?.min ?? 0) / 0.0254).toBeCloseTo(least, 6);
    expect((clearance?.max ?? 0) / 0.0254).toBeCloseTo(most, 6);
  });
});

/** ANSI B4.1-1967 Table 4, 1.97 to 3.15 in (memory): clearance least and most, thousandths of an inch. */
it.each([
  ['LC8', 4, 11.5],
  ['LC9', 6, 17.5],
  ['LC10', 10, 34],
  ['LC11', 14, 50],
])('%s has its last step', (name, least, most) => {
  const { clearance } = fitLimits(name, 2.5 * 25.4);
  expect([clearance?.min, clearance?.max].map((mm = 0) => Number((mm / 0.0254).toFixed(6)))).toEqual([least, most]);
});

describe('a fit', () => {
  it('has both sides in either order, or one alone', () => {
    expect(fitLimits('H7/g6', 8)).toEqual({ hole: { upper: 0.015, lower: 0 }, shaft: { upper: -0.005, lower: -0.014 }, clearance: { max: 0.029, min: 0.005 }, source: 'ISO 286-2:2010 as tabulated' });
    expect(fitLimits('g6/H7', 8)).toEqual(fitLimits('H7/g6', 8));
    expect(fitLimits('H7', 8)).not.toHaveProperty('shaft');
    expect(fitLimits('g6', 8)).not.toHaveProperty('hole');
  });
  it.each([
    ['H7/g6', 0, 'size 0 mm is outside the range of the table of tolerance classes: over 0 up to 250 mm.'],
    ['h6', 300, 'size 300 mm is outside the range of the table of tolerance classes: over 0 up to 250 mm.'],
    ['H99', 5, 'tolerance class "H99" does not exist: a class is a letter (A to Z for holes, a to z for shafts) and a grade 1 to 16, such as H7 or g6; the nearest is H9.'],
    ['Q7', 5, 'tolerance class "Q7" does not exist: a class is a letter (A to Z for holes, a to z for shafts) and a grade 1 to 16, such as H7 or g6; the nearest is H7.'],
    ['H7/H6', 5, 'fit "H7/H6" needs one hole class (upper case) and one shaft class (lower case), such as H7/g6.'],
    ['H7/g6/h5', 5, 'fit "H7/g6/h5" has more than two classes: write hole/shaft, such as H7/g6.'],
    ['t6', 10, 'tolerance class t6 is not defined for 10 mm by ISO 286.'],
    ['RC4', 100, 'size 3.937 in is outside the table of fit RC4: over 0 up to 3.15 in.'],
    ['FN3', 10, 'size 0.3937 in is outside the table of fit FN3: over 0.95 up to 3.15 in.'],
    ['LT3', 5, 'size 0.1969 in is outside the table of fit LT3: over 0.24 up to 3.15 in.'],
  ])('%s at %d mm is refused', (name, size, sentence) => {
    expect(() => fitLimits(name, size)).toThrow(sentence);
  });
});
