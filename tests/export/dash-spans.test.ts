import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dashSpans, type Span } from '../../engine/export/dash-spans.js';

const width = 0.35;
const ink = ({ from, to }: Span): number => to - from;
const gaps = (spans: readonly Span[]): number[] => spans.slice(1).map((span, index) => span.from - (spans[index]?.to ?? 0));
const has = (spans: readonly Span[], at: number): boolean => spans.some(({ from, to }) => from <= at && at <= to);
const lengths = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const broken = fc.constantFrom('dashed', 'chain', 'double-chain' as const);

// Elements in line widths d: dash 12, gap 3, long dash 24, dot no more than 0.5: ISO 128-20, from memory.
describe('broken lines', () => {
  it('a dashed line has dashes of 12 d and gaps of 3 d, within a quarter', () => {
    fc.assert(
      fc.property(lengths(7.2, 400), (length) => {
        const spans = dashSpans('dashed', length, false, width);
        expect(spans.length).toBeGreaterThan(1);
        for (const span of spans) expect(Math.abs(ink(span) / (12 * width) - 1)).toBeLessThanOrEqual(0.25 + 1e-9);
        for (const gap of gaps(spans)) expect(Math.abs(gap / (3 * width) - 1)).toBeLessThanOrEqual(0.25 + 1e-9);
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it('a chain line has long dashes of 24 d, gaps of 3 d and dots of 0.5 d, within a quarter', () => {
    fc.assert(
      fc.property(lengths(22.4, 400), (length) => {
        const spans = dashSpans('chain', length, false, width);
        spans.forEach((span, index) => {
          expect(Math.abs(ink(span) / ((index % 2 === 0 ? 24 : 0.5) * width) - 1)).toBeLessThanOrEqual(0.25 + 1e-9);
        });
        for (const gap of gaps(spans)) expect(Math.abs(gap / (3 * width) - 1)).toBeLessThanOrEqual(0.25 + 1e-9);
      }),
      { seed: 2, numRuns: 500 },
    );
  });

  it('begin and end with a dash that is the longest there is', () => {
    fc.assert(
      fc.property(broken, lengths(0.01, 400), fc.constantFrom(0.18, 0.25, 0.35), (kind, length, pen) => {
        const spans = dashSpans(kind, length, false, pen);
        const [first, last] = [spans[0], spans.at(-1)];
        if (!first || !last) throw new Error('a line has ink');
        expect(first.from).toBe(0);
        expect(last.to).toBeCloseTo(length, 9);
        const longest = Math.max(...spans.map(ink));
        expect(ink(first)).toBeCloseTo(longest, 9);
        expect(ink(last)).toBeCloseTo(longest, 9);
      }),
      { seed: 3, numRuns: 500 },
    );
  });

  it('have no gap too narrow to print, and no gap of no width', () => {
    fc.assert(
      fc.property(broken, lengths(0.01, 400), fc.boolean(), (kind, length, closed) => {
        for (const gap of gaps(dashSpans(kind, length, closed, width))) expect(gap).toBeGreaterThanOrEqual(0.5 - 1e-9);
      }),
      { seed: 4, numRuns: 500 },
    );
  });

  it('a centre line has ink in its middle, where it crosses another, unless its length allows no such pattern', () => {
    const missed = Array.from({ length: 4000 }, (_, index) => 0.1 + index * 0.1).filter(
      (length) => !has(dashSpans('chain', length, false, width), length / 2),
    );
    // Between 106 and 110 widths three periods fit and two or four do not.
    for (const length of missed) expect(length / width).toSatisfy((widths: number) => widths > 106 && widths < 110);
  });

  it('a circle has ink where centre lines cross it', () => {
    for (const kind of ['dashed', 'chain', 'double-chain'] as const) {
      for (const radius of [20, 35, 60, 100]) {
        const length = 2 * Math.PI * radius;
        const spans = dashSpans(kind, length, true, width);
        for (const quarter of [0, 1, 2, 3, 4]) expect(has(spans, (quarter * length) / 4)).toBe(quarter < 4);
      }
    }
  });

  it('a circle is covered once: its last gap ends where its first dash begins', () => {
    fc.assert(
      fc.property(broken, lengths(8, 400), (kind, length) => {
        const spans = dashSpans(kind, length, true, width);
        const [first, last] = [spans[0], spans.at(-1)];
        if (!first || !last) throw new Error('a circle has ink');
        if (spans.length === 1) return;
        expect(first.from + length - last.to).toBeCloseTo(gaps(spans)[0] ?? 0, 9);
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  it('a very short line is drawn through', () => {
    expect(dashSpans('dashed', 1.2, false, width)).toEqual([{ from: 0, to: 1.2 }]);
    expect(dashSpans('chain', 4, false, width)).toEqual([{ from: 0, to: 4 }]);
  });

  it('a continuous line is one stretch of ink', () => {
    expect(dashSpans('continuous', 30, false, width)).toEqual([{ from: 0, to: 30 }]);
  });
});
