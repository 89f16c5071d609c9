import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { penPath, type PenPath } from '../../engine/export/beziers.js';
import { cubicsOf, measureCurve } from '../../engine/export/measured-curve.js';
import type { Curve2 } from '../../engine/geometry/curve.js';
import type { Vector2 } from '../../engine/geometry/vector.js';

const spline: Curve2 = { kind: 'spline', points: [[0, 0], [10, 20], [20, 20], [30, 0], [40, -20], [50, -20], [60, 10]] };
const ellipse = (radiusX: number, radiusY: number, sweep: number, start = 0): Curve2 => ({
  kind: 'ellipse',
  centre: [5, -3],
  radiusX,
  radiusY,
  rotation: 20,
  start,
  sweep,
});

const curves: readonly (readonly [string, Curve2])[] = [
  ['line', { kind: 'line', from: [1, 2], to: [40, -7] }],
  ['arc', { kind: 'arc', centre: [3, 4], radius: 12, start: 30, sweep: -200 }],
  ['ellipse', ellipse(20, 6, 250, 40)],
  ['ellipse the other way', ellipse(20, 6, -250, 40)],
  ['spline', spline],
];

/** Points along a path, close together. */
function along(path: PenPath): Vector2[] {
  const points: Vector2[] = [path.start];
  let from = path.start;
  for (const move of path.moves) {
    const [a, b = a, c = a] = move;
    for (let step = 1; step <= 50; step += 1) {
      const t = step / 50;
      const s = 1 - t;
      const cubic = (axis: 0 | 1): number => s ** 3 * from[axis] + 3 * s * s * t * a[axis] + 3 * s * t * t * b[axis] + t ** 3 * c[axis];
      points.push(move.length === 1 ? [from[0] + (a[0] - from[0]) * t, from[1] + (a[1] - from[1]) * t] : [cubic(0), cubic(1)]);
    }
    from = c;
  }
  return points;
}

const chordSum = (points: readonly Vector2[]): number =>
  points.slice(1).reduce((sum, [x, y], index) => sum + Math.hypot(x - (points[index]?.[0] ?? x), y - (points[index]?.[1] ?? y)), 0);

describe('measureCurve', () => {
  it('knows the length of lines and arcs', () => {
    expect(measureCurve({ kind: 'line', from: [0, 0], to: [30, 40] }).length).toBeCloseTo(50, 12);
    expect(measureCurve({ kind: 'arc', centre: [9, 9], radius: 10, start: 80, sweep: -90 }).length).toBeCloseTo(5 * Math.PI, 12);
  });

  // Perimeter of the ellipse with axes 2 and 1: 4 a E(3/4) = 9.688448220547675 (complete elliptic integral of the second kind).
  it('knows the perimeter of an ellipse', () => {
    expect(measureCurve(ellipse(2, 1, 360)).length).toBeCloseTo(9.688448220547675, 9);
    expect(measureCurve(ellipse(7, 7, 360)).length).toBeCloseTo(14 * Math.PI, 9);
  });

  it.each(curves)('a %s is as long as its many small chords', (_, curve) => {
    expect(measureCurve(curve).length).toBeCloseTo(chordSum(along(penPath(curve))), 1);
  });

  it.each(curves)('parts of a %s join and are as long as asked', (_, curve) => {
    const { length, part } = measureCurve(curve);
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 0.45, noNaN: true }), fc.double({ min: 0.55, max: 0.95, noNaN: true }), (low, high) => {
        const middle = part(low * length, high * length);
        expect(measureCurve(middle).length).toBeCloseTo((high - low) * length, 4);
        const [before, after] = [along(penPath(part(0, low * length))), along(penPath(middle))];
        const [end, start] = [before.at(-1), after[0]];
        if (!end || !start) throw new Error('a part has ends');
        expect(Math.hypot(end[0] - start[0], end[1] - start[1])).toBeLessThan(1e-5);
      }),
      { seed: 6, numRuns: 60 },
    );
  });

  it('a closed curve may be cut over its start', () => {
    for (const closed of [{ kind: 'arc', centre: [0, 0], radius: 10, start: 0, sweep: 360 } as const, ellipse(12, 5, 360, 15)]) {
      const { length, part, closed: isClosed } = measureCurve(closed);
      expect(isClosed).toBe(true);
      for (const piece of [part(-2, 3), part(length - 2, length + 3)]) expect(measureCurve(piece).length).toBeCloseTo(5, 4);
    }
  });

  it('refuses a spline with points missing', () => {
    expect(() => cubicsOf({ kind: 'spline', points: [[0, 0], [1, 1], [2, 2]] })).toThrow(new RangeError('a spline has 3n + 1 points, not 3'));
  });
});

describe('Béziers stay within 1e-4 mm', () => {
  it.each([0.5, 3.5, 20, 200, 2000])('of a circle of radius %d', (radius) => {
    for (const sweep of [360, -360, 90, 17]) {
      for (const [x, y] of along(penPath({ kind: 'arc', centre: [0, 0], radius, start: 12, sweep }))) {
        expect(Math.abs(Math.hypot(x, y) - radius)).toBeLessThan(1e-4);
      }
    }
  });

  it('of an ellipse', () => {
    const [a, b] = [80, 11];
    for (const [x, y] of along(penPath({ kind: 'ellipse', centre: [0, 0], radiusX: a, radiusY: b, rotation: 0, start: 0, sweep: 360 }))) {
      const value = (x / a) ** 2 + (y / b) ** 2 - 1;
      const slope = 2 * Math.hypot(x / a ** 2, y / b ** 2);
      expect(Math.abs(value) / slope).toBeLessThan(1e-4);
    }
  });
});
