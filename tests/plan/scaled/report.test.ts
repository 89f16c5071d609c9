import { describe, expect, it } from 'vitest';
import { resolveValues } from '../../../engine/part/resolve.js';
import { factorOf, scaledPart, scaleValues } from '../../../engine/part/scaling/index.js';
import { barToBuy } from '../../../engine/part/bar-to-buy.js';
import { fitChanges } from '../../../engine/plan/scaled/fits.js';
import { machineNeeds } from '../../../engine/plan/scaled/machines.js';
import { inOrder, scaleReport } from '../../../engine/plan/scaled/report.js';
import { tapChanges } from '../../../engine/plan/scaled/taps.js';
import { solidOf } from '../../../engine/solid/build.js';
import { loadKernel } from '../../../engine/solid/kernel.js';
import { toleranceLimits } from '../../../engine/trade/fits.js';
import { tapStrength } from '../../../engine/trade/sums/tap-torque.js';
import { defaultShop } from '../../../engine/trade/shop/shop.js';
import { findThread } from '../../../engine/trade/threads.js';
import { builtInGenerator } from '../../support/built-in-generator.js';

async function scaled(name: string, to: string) {
  const generator = await builtInGenerator(name);
  const values = resolveValues(generator, {}, undefined);
  const factor = factorOf({ to, engine: generator.build(values).engine });
  const made = scaleValues(generator, values, factor.value);
  const larger = scaledPart(generator, factor);
  return { original: { generator, values }, generator: larger, ...made, factor, before: generator.build(values), after: larger.build(made.values) };
}

describe('the report of the crosshead for 7-1/4 in', async () => {
  const job = await scaled('crosshead', '7.25 in');
  const report = await scaleReport({ ...job, series: undefined, shop: undefined, unit: 'in' });

  it('says for which engine the part is now, and keeps its files apart', () => {
    expect(job.after).toMatchObject({ name: 'crosshead-7-25', engine: 'Tormentil, 7.25 in gauge', title: 'Crosshead' });
    expect(report).toMatchObject({ part: 'crosshead', from: 'Tormentil, 5 inch gauge', to: 'Tormentil, 7.25 in gauge', series: null });
  });

  it('has a line for every parameter, those that are to be decided on top', () => {
    expect(report.lines.map(({ parameter }) => parameter).sort()).toEqual(Object.keys(job.original.values).sort());
    const ranks = report.lines.map((line) => (line.decision !== undefined ? 0 : line.mended !== undefined ? 1 : line.half !== undefined ? 2 : 3));
    expect(ranks).toEqual([...ranks].sort());
    const off = report.lines.filter(({ half }) => half !== undefined).map(({ percent }) => Math.abs(percent));
    expect(off).toEqual([...off].sort((a, b) => b - a));
  });

  it('weighs near to the cube of the factor: 1.45 cubed is 3.05, a little more for bar that is thicker', () => {
    // 11SMn30 of 7850 kg/m3.
    expect(report.kilograms!.after / report.kilograms!.before).toBeGreaterThan(3.0);
    expect(report.kilograms!.after / report.kilograms!.before).toBeLessThan(3.2);
  });

  it('takes fits again at the new diameter, of the same class', () => {
    // ISO 286-2: H7 over 6 up to 10 mm is +15, 0 micrometres, for 1/4 in as for 3/8 in.
    expect(report.fits.find(({ cut }) => cut === 'cross bore for the pin')).toMatchObject({ class: 'H7', before: { size: 6.35, upper: 0.015 }, after: { size: 9.525, upper: 0.015, lower: 0 } });
    // The register passes 10 mm: +18.
    expect(report.fits.find(({ cut }) => cut === 'register for the rod')).toMatchObject({ before: { upper: 0.015 }, after: { upper: 0.018 } });
    for (const fit of report.fits) expect({ upper: fit.after.upper, lower: fit.after.lower }).toEqual(toleranceLimits(fit.class, fit.after.size));
  });

  it('tells which taps are safe: a larger one is not where its coarse pitch asks nearly all that it stands', () => {
    // The tap twists off at pi (0.6 d)^3 900 / 16 N mm of its root: over 1 N m a hand feels it first.
    expect(tapStrength(findThread('5-40'))).toBeLessThan(1);
    expect(tapStrength(findThread('10-24'))).toBeGreaterThan(1);
    expect(report.work.taps.map(({ operation, verdict }) => [operation, verdict])).toEqual([[50, 'stays safe'], [100, 'stays risky'], [140, 'stays risky'], [190, 'stays risky']]);
    expect(report.work.taps.find(({ operation }) => operation === 100)!.after.margin).toBeGreaterThan(1.5 * report.work.taps.find(({ operation }) => operation === 100)!.before.margin);
  });

  it('tells which test piece is no longer worth making', () => {
    const pads = report.work.rehearsals.find(({ operation }) => operation === 100)!;
    expect(pads.verdict).toBe('no longer worth it');
    expect(pads.before.hoursAtStake).toBeGreaterThan(pads.before.rehearsalHours);
    expect(pads.after.hoursAtStake).toBeLessThan(pads.after.rehearsalHours);
  });

  it('takes bar that is sold with both its sides, and asks nobody', () => {
    expect(report.work.buy).toMatchObject({ asSold: true, sold: 'flat bar 1-1/2 x 2 in' });
    expect(report.asks).toEqual([]);
    expect(report.lines.find(({ parameter }) => parameter === 'barWidth')).toMatchObject({ rule: 'sold with bodyHeight', because: 'of flat bar 1-1/2 x 2 in, the least sold so thick that holds the part' });
  });

  it('cautions: no boiler is designed, and what weight loads is pressed harder', () => {
    expect(report.cautions.join(' ')).toContain('No boiler or pressure part is designed here');
    expect(report.cautions.join(' ')).toContain('is pressed 1.45 times as hard');
  });
});

it('a part under pressure says that it is not reckoned', async () => {
  const job = await scaled('gland-nut', '7.25 in');
  const { cautions, strength, asks } = await scaleReport({ ...job, series: undefined, shop: undefined, unit: 'mm' });
  expect(strength).toEqual([]);
  expect(cautions[0]).toContain('This part bears on steam or water under pressure: nothing of that is reckoned here.');
  expect(asks.map(({ about }) => about)).toContain('thread');
});

describe('machines', () => {
  const small = { unit: 'mm', machines: [{ name: 'little lathe', kind: 'lathe', swing: 55, betweenCentres: 60, travels: {}, speeds: [100], dials: {}, readout: false }, { name: 'little mill', kind: 'mill', travels: { x: 150, y: 90, z: 200 }, speeds: [100], dials: {}, readout: false }], paper: 'A4', fits: { running: 'H8/f7', sliding: 'H7/g6', locating: 'H7/h6', press: 'H7/p6' } } as const;

  it('a blank that no longer goes on is told with the figures', async () => {
    const kernel = await loadKernel();
    const { before, after } = await scaled('crosshead', '7.25 in');
    const [was, is] = [before, after].map((part) => machineNeeds(part, solidOf(kernel, part, { through: 0 }), 'mm', small));
    // Bar 1 1/4 x 1 in turns about its middle, off by half the lug (1/32 in): the farthest corner sweeps 2 x hypot(0.65625, 0.5) in = 41.9 mm.
    const swing = was!.find(({ what }) => what === 'swing')!;
    expect(swing.needs).toBeCloseTo(2 * 25.4 * Math.hypot(0.625 + 0.03125, 0.5), 3);
    expect(swing.fits).toBe(true);
    expect(is!.find(({ what }) => what === 'swing')!.fits).toBe(false);
    // 1 3/4 in long blank: 44.45 mm.
    expect(was!.find(({ what }) => what === 'between centres')!.needs).toBeCloseTo(44.45, 6);
  });

  it('a report asks for another machine', async () => {
    const job = await scaled('crosshead', '7.25 in');
    const { asks } = await scaleReport({ ...job, series: undefined, shop: small, unit: 'mm' });
    expect(asks.map(({ about, ask }) => `${about} ${ask}`).join(' ')).toMatch(/set-up A needs swing 65\.\d mm of the little lathe, which has 55\.0: another machine/);
  });
});

describe('bar', () => {
  it('that is sold is named; one that is not comes out of the least that holds it', async () => {
    const { before, after } = await scaled('connecting-rod', '7.25 in');
    expect(barToBuy(before)).toMatchObject({ sold: 'flat bar 5/16 x 1-1/4 in', asSold: true });
    expect(barToBuy(after).section.map((side) => Number((side / 25.4).toFixed(4)))).toEqual([0.5, 2]);
    expect(barToBuy(after)).toMatchObject({ asSold: true, sold: 'flat bar 1/2 x 2 in' });
    expect(barToBuy({ ...after, stock: { ...after.stock, section: [11, 40] } })).toMatchObject({ asSold: false, sold: 'flat bar 12 x 40 mm' });
  });

  it('that no list has is asked about, and the print says so', async () => {
    const job = await scaled('crosshead', '4');
    expect(barToBuy(job.after).sold).toBeUndefined();
    const { asks } = await scaleReport({ ...job, series: undefined, shop: undefined, unit: 'in' });
    expect(asks.filter(({ about }) => about === 'bar')).toEqual([{ about: 'bar', ask: '4.000 x 5.000 in: no bar in the lists holds the part; cut it from plate, or ask what can be got' }]);
    expect(job.after.notes.at(-1)).toEqual(['Bar of ', { length: 101.6 }, ' x ', { length: 127 }, ' is in no list: cut it from plate, or order it.']);
    expect((await scaled('crosshead', '7.25 in')).after.notes).toEqual(job.before.notes);
  });
});

it('taps and fits of a part against itself change nothing', async () => {
  const { before } = await scaled('crosshead', '7.25 in');
  for (const { before: was, after } of tapChanges(before, before)) expect(after).toEqual(was);
  for (const { before: was, after } of fitChanges(before, before)) expect(after).toEqual(was);
  expect(inOrder([])).toEqual([]);
});

it('what the shop does not list is to be got, with the second best', async () => {
  const job = await scaled('crosshead', '7.25 in');
  const shop = { ...defaultShop, taps: [findThread('2-56'), findThread('3/8x40')] };
  const { work } = await scaleReport({ ...job, series: undefined, shop, unit: 'in' });
  expect(work.toGet.map(({ toGet }) => toGet)).toEqual(expect.arrayContaining(['tap 2-64 UNF', 'tap 10-24 UNC']));
  expect(work.toGet.map(({ toGet }) => toGet)).not.toContain('tap 3/8x40 ME');
});

it('to its own gauge a part keeps its name, and nothing is to be decided', async () => {
  const job = await scaled('valve-rod-fork', '5 in');
  expect(job.after).toEqual(job.before);
  const { asks, kilograms, strength } = await scaleReport({ ...job, series: undefined, shop: undefined, unit: 'in' });
  expect(asks).toEqual([]);
  expect(kilograms!.after).toBe(kilograms!.before);
  expect(strength.every(({ change, exactChange }) => change === 0 && exactChange === 0)).toBe(true);
});
