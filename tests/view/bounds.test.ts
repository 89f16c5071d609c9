import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Curve2 } from '../../engine/geometry/curve.js';
import { boundsOf } from '../../engine/view/bounds.js';
import { curvePoint } from '../support/line-agreement.js';

const SEED = 11;
const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const point = fc.tuple(number(-9, 9), number(-9, 9));

const curve: fc.Arbitrary<Curve2> = fc.oneof(
  fc.record({ kind: fc.constant('line' as const), from: point, to: point }),
  fc.record({ kind: fc.constant('arc' as const), centre: point, radius: number(0.1, 9), start: number(0, 360), sweep: number(-360, 360) }),
  fc.record({ kind: fc.constant('ellipse' as const), centre: point, radiusX: number(0.1, 9), radiusY: number(0.1, 9), rotation: number(-180, 180), start: number(0, 360), sweep: number(-360, 360) }),
  fc.record({ kind: fc.constant('spline' as const), points: fc.array(point, { minLength: 7, maxLength: 7 }) }),
);

it('bounds hold every point of a curve and touch it on all four sides', () => {
  fc.assert(fc.property(curve, (given) => {
    const { low, high } = boundsOf([given]);
    const points = Array.from({ length: 4001 }, (_, i) => curvePoint(given, i / 4000));
    for (const k of [0, 1] as const) {
      const [least, most] = points.reduce(([a, b], p) => [Math.min(a, p[k]), Math.max(b, p[k])], [Infinity, -Infinity]);
      expect(least).toBeGreaterThanOrEqual(low[k] - 1e-9);
      expect(most).toBeLessThanOrEqual(high[k] + 1e-9);
      expect(least - low[k]).toBeLessThan(1e-4);
      expect(high[k] - most).toBeLessThan(1e-4);
    }
  }), { seed: SEED, numRuns: 300 });
});

it('bounds of nothing are a point at the origin', () => {
  expect(boundsOf([])).toEqual({ low: [0, 0], high: [0, 0] });
});
