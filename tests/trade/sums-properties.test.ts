import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reckon, type Json } from '../../engine/trade/sums/index.js';
import { jawPacking } from '../../engine/trade/sums/jaw-packing.js';

const result = (name: string, texts: Readonly<Record<string, string>>) => reckon(name, texts).result;
const number = (value: Json | undefined): number => (typeof value === 'number' ? value : Number.NaN);

describe('for any values', () => {
  const size = fc.double({ min: 1, max: 100, noNaN: true });
  it('equalising never adds metal, and both sides meet the target where it is possible', () => {
    fc.assert(
      fc.property(size, size, size, (left, right, target) => {
        const sum = result('equalise', { left: `${left.toFixed(3)} mm`, right: `${right.toFixed(3)} mm`, target: `${target.toFixed(3)} mm` });
        const [l, r] = [Number(left.toFixed(3)), Number(right.toFixed(3))];
        const t = Number(target.toFixed(3));
        const [offLeft, offRight] = [(sum['left'] as { remove: number }).remove, (sum['right'] as { remove: number }).remove];
        expect(Math.min(offLeft, offRight)).toBeGreaterThanOrEqual(0);
        expect(sum['possible']).toBe(Math.min(l, r) >= t);
        if (sum['possible'] === true) expect([l - offLeft, r - offRight].map((value) => value.toFixed(6))).toEqual([t.toFixed(6), t.toFixed(6)]);
        if (sum['saves'] === 'width') expect(l + r - offLeft - offRight).toBeCloseTo(2 * t, 6);
      }),
      { seed: 7 },
    );
  });
  it('packing runs from the narrow formula to 1.5 times the throw as the jaws widen', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 5, noNaN: true }), fc.double({ min: 8, max: 60, noNaN: true }), fc.double({ min: 0, max: 6, noNaN: true }), (offset, radius, half) => {
        const packing = jawPacking(offset, radius, half);
        expect(packing).toBeGreaterThanOrEqual(jawPacking(offset, radius, 0) - 1e-12);
        expect(packing).toBeLessThanOrEqual(1.5 * offset + 1e-12);
        // Jaws at least 0.866 of the throw wide on each side touch flat: each of the two stands half a throw farther in.
        if (half >= offset) expect(packing).toBeCloseTo(1.5 * offset, 9);
      }),
      { seed: 8 },
    );
  });
  it('holes of a circle lie on it, a chord apart, and the pattern turned back comes home', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 24 }), size, fc.double({ min: -180, max: 180, noNaN: true }), (count, diameter, start) => {
        const angle = start.toFixed(3);
        const { holes, chord } = result('bolt-circle', { holes: String(count), diameter: `${diameter.toFixed(4)} mm`, start: angle });
        const points = holes as readonly { x: number; y: number }[];
        points.forEach(({ x, y }, index) => {
          expect(2 * Math.hypot(x, y)).toBeCloseTo(Number(diameter.toFixed(4)), 6);
          const next = points[(index + 1) % count] as { x: number; y: number };
          expect(Math.hypot(next.x - x, next.y - y)).toBeCloseTo(number(chord), 6);
        });
        const text = points.map(({ x, y }) => `${x.toFixed(9)} mm,${y.toFixed(9)} mm`).join(';');
        const turned = result('hole-pattern', { points: text, angle })['holes'] as readonly { x: number; y: number }[];
        expect(turned[0]?.x).toBeCloseTo(Number(diameter.toFixed(4)) / 2, 5);
        expect(turned[0]?.y).toBeCloseTo(0, 5);
      }),
      { seed: 9, numRuns: 40 },
    );
  });
  it('the other hand of the other hand is the pattern', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.integer({ min: -99, max: 99 }), fc.integer({ min: -99, max: 99 })), { minLength: 1, maxLength: 6 }), (points) => {
        const text = (list: readonly { x: number; y: number }[]): string => list.map(({ x, y }) => `${x} mm,${y} mm`).join(';');
        const once = result('hole-pattern', { points: text(points.map(([x, y]) => ({ x, y }))), hand: 'other' })['holes'] as readonly { x: number; y: number }[];
        const twice = result('hole-pattern', { points: text(once), hand: 'other' })['holes'];
        expect(twice).toEqual(points.map(([x, y]) => ({ x, y })));
      }),
      { seed: 10 },
    );
  });
  it('countersinks of any angle: depth and diameter give each other', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 150 }), size, fc.double({ min: 0, max: 0.9, noNaN: true }), (angle, diameter, part) => {
        const [d, hole] = [diameter.toFixed(3), (diameter * part).toFixed(3)];
        const { depth, fromPoint } = result('countersink', { angle: String(angle), diameter: `${d} mm`, hole: `${hole} mm` });
        const rise = 2 * Math.tan((angle * Math.PI) / 360);
        expect(Number(hole) + number(depth) * rise).toBeCloseTo(Number(d), 5);
        expect(number(fromPoint) * rise).toBeCloseTo(Number(d), 5);
      }),
      { seed: 11 },
    );
  });
  it('dials: turns and divisions add up to the position', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 100_000 }), fc.constantFrom('0.1 in', '0.0625 in', '2 mm', '3 mm'), fc.constantFrom('direct', 'diameter'), (microns, perTurn, reads) => {
        const sum = result('handwheel', { to: `${microns / 1000} mm`, 'per-turn': perTurn, division: '0.02 mm', reads });
        const setting = (sum['settings'] as readonly { turns: number; divisions: number }[])[0] as { turns: number; divisions: number };
        const counted = setting.turns * number(sum['perTurn']) + setting.divisions * 0.02;
        expect(counted / (reads === 'diameter' ? 2 : 1)).toBeCloseTo(microns / 1000, 5);
        expect(setting.divisions * 0.02).toBeLessThan(number(sum['perTurn']) + 1e-6);
      }),
      { seed: 12 },
    );
  });
});
