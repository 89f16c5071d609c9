import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findDrill } from '../../engine/trade/drills.js';
import { clearanceDrill, tappingDrill, threadPercent, threadPercents } from '../../engine/trade/tapping.js';
import { findThread, threads } from '../../engine/trade/threads.js';
import { published } from '../published/read-csv.js';

const percentOf = (thread: string, drill: string, basis: string): number =>
  threadPercents(findThread(thread), findDrill(drill).diameter).find((row) => row.basis.startsWith(basis))?.percent ?? Number.NaN;

describe('thread percentages against published charts', () => {
  it('of the handbook (1.299 P; printed unevenly rounded, so within 1.5 points)', () => {
    for (const row of published('tap-drill-percent')) {
      const drill = row.text('drill').replace('No.', '#').replace(/mm$/, ' mm');
      expect(Math.abs(percentOf(row.text('thread'), drill, '1.299') - row.number('pct_published')), `${row.text('thread')} ${drill}`).toBeLessThanOrEqual(1.5);
      expect(percentOf(row.text('thread'), drill, '1.299')).toBeCloseTo(row.number('pct_formula'), 0);
    }
  });
  it('of Unified tapping drills', () => {
    for (const row of published('threads-unified')) {
      for (const column of ['75', '50']) {
        const percent = percentOf(`${row.text('designation')} ${row.text('series')}`, row.text(`tap_drill_${column}`), '1.299');
        expect(Math.abs(percent - row.number(`pct_${column}`))).toBeLessThanOrEqual(1);
      }
    }
  });
  it('of metric tapping drills, by both customs', () => {
    for (const row of published('threads-metric')) {
      const drill = `${row.text('tap_drill_mm')} mm`;
      expect(Math.abs(percentOf(row.text('designation'), drill, '1.2269') - row.number('pct_of_d_minus_d3_depth'))).toBeLessThanOrEqual(1);
      expect(Math.abs(percentOf(row.text('designation'), drill, '1.0825') - row.number('pct_of_5H/8_depth'))).toBeLessThanOrEqual(1);
    }
  });
  it('of British Association, Whitworth form and live-steam lists', () => {
    for (const row of published('threads-ba')) {
      const thread = findThread(row.text('designation'));
      expect(Math.abs(threadPercent(thread, row.number('tap_drill_mm')).percent - row.number('pct_engagement'))).toBeLessThanOrEqual(1.5);
    }
    for (const row of published('threads-whitworth-me')) {
      const thread = findThread(row.text('series') === 'ME' ? `${row.text('nominal')}x${row.text('tpi')} ME` : `${row.text('nominal')} ${row.text('series')}`);
      expect(Math.abs(threadPercent(thread, row.number('tap_drill_mm')).percent - row.number('pct_engagement'))).toBeLessThanOrEqual(1);
    }
    for (const row of published('tap-drills-live-steam')) {
      const thread = findThread(row.text('thread'));
      expect(Math.abs(threadPercent(thread, findDrill(row.text('tap_drill').replace(/^\d+$/, '#$&')).diameter).percent - row.number('pct_engagement')), row.text('thread')).toBeLessThanOrEqual(2);
    }
  });
});

describe('the tapping drill', () => {
  it('is worked out, not copied: 75 % of 1/4-20 is number 7, and says on which basis', () => {
    const { drill, percent, basis, withinClass } = tappingDrill(findThread('1/4-20'), 75);
    expect(drill.name).toBe('#7');
    expect(percent).toBeCloseTo(75.4, 1);
    expect(basis).toBe('1.299 P (three quarters of the sharp V)');
    expect(withinClass).toBe(true);
  });
  it('is the nearest of all drills, whatever is asked', () => {
    fc.assert(
      fc.property(fc.constantFrom(...threads), fc.double({ min: 40, max: 90, noNaN: true }), (thread, percent) => {
        const choice = tappingDrill(thread, percent);
        const coarser = tappingDrill(thread, percent, { from: [choice.drill] });
        expect(coarser.drill).toBe(choice.drill);
        expect(choice.drill.diameter).toBeLessThan(thread.major);
        // A 0.1 mm step of the drawer is 0.05 mm of doubt at most from 0.2 to 13.9 mm, beyond that a quarter of a millimetre, beyond 32 mm a half.
        expect(Math.abs(choice.drill.diameter - choice.ideal)).toBeLessThanOrEqual(choice.ideal < 13.9 ? 0.0501 : choice.ideal < 32 ? 0.1251 : 0.2501);
        expect(threadPercent(thread, choice.ideal).percent).toBeCloseTo(percent, 9);
      }),
      { seed: 4 },
    );
  });
  it('grows as the percentage falls', () => {
    for (const thread of threads) expect(tappingDrill(thread, 50).drill.diameter).toBeGreaterThanOrEqual(tappingDrill(thread, 80).drill.diameter);
  });
  it('refuses percentages and holes that make no thread', () => {
    expect(() => tappingDrill(findThread('M3'), 120)).toThrow('engagement 120 is outside 20 to 100 per cent; 60 to 75 is usual.');
    expect(() => threadPercent(findThread('M3'), 3)).toThrow('a hole of 3 mm leaves no thread of M3x0.5: it must lie between nought and 3 mm.');
  });
});

describe('clearance drills', () => {
  it('are those of ASME B18.2.8', () => {
    for (const row of published('clearance-holes-inch')) {
      const thread = threads.find(({ series, major }) => series.startsWith('unified') && Math.abs(major / 25.4 - row.number('major_in')) < 1e-6);
      if (thread === undefined) throw new Error(row.text('screw'));
      const { drill, source } = clearanceDrill(thread, row.text('fit') as 'close');
      expect(drill).toBe(findDrill(row.text('drill')));
      expect(Math.abs(drill.diameter / 25.4 - row.number('hole_min_in'))).toBeLessThan(0.0006);
      expect(source).toBe('ASME B18.2.8');
    }
  });
  it('are those of ISO 273', () => {
    for (const row of published('clearance-holes-metric')) {
      const thread = findThread(row.text('screw'));
      for (const [fit, column] of [['close', 'fine_mm'], ['normal', 'medium_mm'], ['loose', 'coarse_mm']] as const) {
        expect(clearanceDrill(thread, fit).drill.diameter).toBe(row.number(column));
      }
    }
  });
  it('clear every screw, and more so from close to loose', () => {
    for (const thread of threads) {
      const [close, normal, loose] = (['close', 'normal', 'loose'] as const).map((fit) => clearanceDrill(thread, fit).clearance);
      expect(close).toBeGreaterThan(0);
      expect(normal).toBeGreaterThan(close ?? 0);
      expect(loose).toBeGreaterThan(normal ?? 0);
    }
  });
});
