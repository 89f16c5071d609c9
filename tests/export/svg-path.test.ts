import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../engine/export/decimal.js';
import { pathData, pointWriter } from '../../engine/export/svg-path.js';

const point = pointWriter(100);

describe('decimal', () => {
  it.each([
    [0, '0'],
    [-0, '0'],
    [-0.0004, '0'],
    [1.5, '1.5'],
    [100, '100'],
    [1200, '1200'],
    [0.0005, '0.001'],
    [-12.3456, '-12.346'],
    [1e-9, '0'],
  ])('writes %d as %s', (value, written) => {
    expect(decimal(value)).toBe(written);
  });

  it('is plain and within half of the last place', () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), (value) => {
        expect(decimal(value)).toMatch(/^-?\d+(\.\d{0,2}[1-9])?$/);
        expect(Math.abs(Number(decimal(value)) - value)).toBeLessThanOrEqual(0.0005 + 1e-9);
      }),
      { seed: 7 },
    );
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses %s', (value) => {
    expect(() => decimal(value)).toThrow(RangeError);
  });
});

describe('pathData', () => {
  it('turns the paper over: y counts down from the top', () => {
    expect(pathData({ kind: 'line', from: [10, 90], to: [20, 100] }, point)).toBe('M10 10L20 0');
  });

  it('draws a counter-clockwise quarter as a true arc', () => {
    expect(pathData({ kind: 'arc', centre: [50, 50], radius: 10, start: 0, sweep: 90 }, point)).toBe('M60 50A10 10 0 0 0 50 40');
  });

  it('draws a clockwise quarter the other way', () => {
    expect(pathData({ kind: 'arc', centre: [50, 50], radius: 10, start: 90, sweep: -90 }, point)).toBe('M50 40A10 10 0 0 1 60 50');
  });

  it('draws a full circle in two halves', () => {
    expect(pathData({ kind: 'arc', centre: [50, 50], radius: 10, start: 0, sweep: 360 }, point)).toBe('M60 50A10 10 0 0 0 40 50A10 10 0 0 0 60 50');
  });

  it('turns an ellipse against the sense of the paper', () => {
    const data = pathData({ kind: 'ellipse', centre: [50, 50], radiusX: 20, radiusY: 10, rotation: 90, start: 0, sweep: 90 }, point);
    expect(data).toBe('M50 30A20 10 -90 0 0 40 50');
  });

  it('draws splines as Béziers', () => {
    expect(pathData({ kind: 'spline', points: [[0, 100], [1, 99], [2, 99], [3, 100]] }, point)).toBe('M0 0C1 1 2 1 3 0');
  });
});
