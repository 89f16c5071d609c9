import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { drills, findDrill, nearestDrill } from '../../engine/trade/drills.js';
import { stockSizes } from '../../engine/trade/stock.js';
import { published } from '../published/read-csv.js';

const inch = 25.4;
const missing = spawnSync('units', ['--version']).status !== 0;
const units = (from: string): number => Number(spawnSync('units', ['-t', '-o', '%.12g', from, 'in'], { encoding: 'utf8' }).stdout);

describe('drills against published charts', () => {
  it('number and letter drills', () => {
    for (const row of published('drills-number-letter')) {
      const drill = findDrill(row.text('name'));
      expect(drill.series).toBe(row.text('series'));
      expect(drill.diameter / inch, row.text('name')).toBeCloseTo(row.number('dia_in'), 6);
    }
  });
  it('fractions', () => {
    for (const row of published('drills-fraction')) expect(findDrill(row.text('fraction') === '1/1' ? '1 in' : row.text('fraction')).diameter).toBeCloseTo(row.number('mm'), 3.9);
  });
  // ASME B94.11M taper shanks: by 64ths to 1-3/4 in, by 32nds to 2-1/4 in; ISO 235: by 0.25 to 32, by 0.5 to 51, by 1 mm above (memory).
  it.each([['1-1/64 in', 1 + 1 / 64], ['1-31/64', 1 + 31 / 64], ['1-3/4 in', 1.75], ['1 25/32 in', 1 + 25 / 32], ['2-1/4 in', 2.25]])('large fractions: %s', (name, inches) => expect(findDrill(name).diameter / inch).toBeCloseTo(inches, 9));
  it('large sizes that are no drills', () => {
    for (const name of ['1-49/64 in', '2-17/64 in', '26.1 mm', '33.25 mm', '52.5 mm', '65 mm']) expect(() => findDrill(name), name).toThrow(/not in the tables; the nearest is/);
    for (const name of ['26.25 mm', '33.5 mm', '52 mm', '64 mm']) expect(findDrill(name).name).toBe(name);
  });
  it('metric sizes, all of them and none between 0.2 and 14 mm beside the steps', () => {
    for (const row of published('drills-metric')) expect(findDrill(`${row.text('dia_mm')} mm`).diameter).toBe(row.number('dia_mm'));
    expect(drills.filter(({ series, diameter }) => series === 'metric' && diameter < 14)).toHaveLength(32 + 40 + 110);
  });
});

/** The definitions of the units program of the system are the second source of gauges. */
describe('gauges agree with the units program', () => {
  it.skipIf(missing)('number drills 1 to 80 (skipped: the units program is not installed)', () => {
    for (let number = 1; number <= 80; number += 1) {
      const theirs = units(`drillgauge(${number})`);
      // The program interpolates along straight runs: it is within its own rounding there.
      expect(Math.abs(findDrill(`#${number}`).diameter / inch - theirs), `#${number}`).toBeLessThan(0.00011);
    }
  }, 30_000);
  it.skipIf(missing)('letter drills (skipped: the units program is not installed)', () => {
    for (const letter of 'ABCDEFGHIJKLMNOPQRSTUVWXYZ') expect(findDrill(letter).diameter / inch).toBeCloseTo(units(`drill${letter}`), 6);
  }, 30_000);
  it.skipIf(missing)('wire gauges (skipped: the units program is not installed)', () => {
    const gauge = (name: string, form: string): number => (stockSizes(form).find((row) => row.name === name)?.size ?? 0) / inch;
    for (let number = 0; number <= 50; number += 1) expect(gauge(`${number} SWG`, 'swg'), `${number} SWG`).toBeCloseTo(units(`brwiregauge(${number})`), 5);
    for (let number = 0; number <= 40; number += 1) expect(gauge(`${number} AWG`, 'awg')).toBeCloseTo(units(`wiregauge(${number})`), 5);
  }, 60_000);
});

describe('a drill by name', () => {
  it.each([
    ['#53', 1.5113],
    ['No. 53', 1.5113],
    ['F', 6.5278],
    ['f', 6.5278],
    ['1/16 in', 1.5875],
    ['1/16', 1.5875],
    ['2.05 mm', 2.05],
    ['no 53', 1.5113],
    ['.25 in', 6.35],
  ])('%s', (name, diameter) => {
    expect(findDrill(name).diameter).toBe(diameter);
  });
  it('comes back by its own name', () => {
    for (const drill of drills) expect(findDrill(drill.name)).toBe(drill);
    expect(new Set(drills.map(({ name }) => name)).size).toBe(drills.length);
  });
  it('that is unknown is refused with the nearest', () => {
    expect(() => findDrill('#81')).toThrow(/metric sizes 0\.2 to 64 mm; the nearest is #80\.$/);
    expect(() => findDrill('2.03 mm')).toThrow('drill "2.03 mm" is not in the tables; the nearest is 2.05 mm.');
    expect(() => findDrill('5')).toThrow('drill "5" has no unit: write 5 mm or 5 in, or #5 for the number drill.');
    expect(() => findDrill('2.05')).toThrow('drill "2.05" has no unit: write 2.05 mm or 2.05 in.');
    expect(() => findDrill('banana')).toThrow(/^drill "banana" is not in the tables: allowed are #1 to #80/);
  });
});

describe('the nearest drill', () => {
  it('keeps to series and limits', () => {
    expect(nearestDrill(2).name).toBe('2 mm');
    expect(nearestDrill(2, { series: 'number' }).name).toBe('#47');
    expect(nearestDrill(2, { series: ['fraction', 'number'], atLeast: 2 }).name).toBe('#46');
    expect(nearestDrill(2, { atMost: 1.99 }).diameter).toBeCloseTo(0.0781250 * 25.4, 2);
    expect(() => nearestDrill(2, { atLeast: 70 })).toThrow('no drill lies within the limits asked for near 2 mm; the tables run from 0.2 to 64 mm.');
  });
});
