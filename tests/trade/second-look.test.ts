import { describe, expect, it } from 'vitest';
import { findDrill } from '../../engine/trade/drills.js';
import { fitLimits, toleranceMicrometres } from '../../engine/trade/fits.js';
import { findTable, type TableRow } from '../../engine/trade/tables/index.js';
import { clearanceDrill } from '../../engine/trade/tapping.js';
import { findThread } from '../../engine/trade/threads.js';

/** Rows written down a second time, from memory of the standards named and without sight of the tables. */
const inch = 25.4;
const rowOf = (table: string, name: string): TableRow => {
  const answer = findTable(table).find(name);
  const row = answer.kind === 'row' ? answer.row : answer.rows.find((candidate) => candidate.name === name);
  if (row === undefined) throw new Error(`no ${name} in ${table}`);
  return row;
};
const inches = (mm: unknown): number => Number((Number(mm) / inch).toFixed(4));

describe('ASME B1.1, inches: major, pitch diameter, 2B minor least and most', () => {
  it.each([
    ['0-80', 0.06, 0.0519, 0.0465, 0.0514],
    ['1-72', 0.073, 0.064, 0.058, 0.0635],
    ['2-56', 0.086, 0.0744, 0.0667, 0.0737],
    ['4-40', 0.112, 0.0958, 0.0849, 0.0939],
    ['6-32', 0.138, 0.1177, 0.104, 0.114],
    ['10-32', 0.19, 0.1697, 0.156, 0.164],
    ['1/4-28', 0.25, 0.2268, 0.211, 0.22],
    ['5/16-18', 0.3125, 0.2764, 0.252, 0.265],
    ['1/2-13', 0.5, 0.45, 0.417, 0.434],
  ])('%s', (name, major, pitchDiameter, least, most) => {
    const row = rowOf('threads', name);
    const minor = row['minorInternal'] as { readonly min: number; readonly max: number };
    expect([row['major'], row['pitchDiameter'], minor.min, minor.max].map(inches)).toEqual([major, pitchDiameter, least, most]);
  });
});

describe('ISO 724 and ISO 965, mm: pitch, effective, basic minor, 6H minor most', () => {
  it.each([
    ['M2', 0.4, 1.74, 1.567, 1.679],
    ['M3', 0.5, 2.675, 2.459, 2.599],
    ['M4', 0.7, 3.545, 3.242, 3.422],
    ['M6', 1, 5.35, 4.917, 5.153],
    ['M10', 1.5, 9.026, 8.376, 8.676],
  ])('%s', (name, pitch, effective, minor, most) => {
    const thread = findThread(name);
    expect([thread.pitch, thread.pitchDiameter, thread.minorInternal].map((mm) => Number(mm.toFixed(3)))).toEqual([pitch, effective, minor]);
    expect(thread.classes.find(({ of }) => of === 'minorInternal')?.max).toBeCloseTo(most, 3);
  });
});

describe('BS 93 and BS 84: major, effective, core', () => {
  it.each([
    ['0 BA', 'mm', 6, 5.4, 4.8],
    ['2 BA', 'mm', 4.7, 4.215, 3.73],
    ['5 BA', 'mm', 3.2, 2.845, 2.49],
    ['8 BA', 'mm', 2.2, 1.94, 1.68],
    ['12 BA', 'mm', 1.3, 1.13, 0.96],
    ['1/4 BSW', 'in', 0.25, 0.218, 0.186],
    ['1/8 BSW', 'in', 0.125, 0.109, 0.093],
    ['3/8 BSF', 'in', 0.375, 0.343, 0.311],
    ['1/4x40', 'in', 0.25, 0.234, 0.218],
    ['3/8x32', 'in', 0.375, 0.355, 0.335],
  ])('%s', (name, unit, ...sizes) => {
    const { major, pitchDiameter, minorInternal } = findThread(name);
    const scale = unit === 'in' ? inch : 1;
    expect([major, pitchDiameter, minorInternal].map((mm) => Number((mm / scale).toFixed(4)))).toEqual(sizes);
  });
});

/** Handbooks after BS 84:1956 print 0.2008, 0.2413 and 0.3461 (memory); two stored charts print 0.2414 and 0.3460 (read). */
it.each([['1/4 BSF', 0.2007, 0.2008], ['5/16 BSW', 0.2414, 0.2413], ['7/16 BSW', 0.346, 0.3461]])('%s says that its core is printed in two ways', (name, core, other) => {
  const thread = findThread(name);
  expect(inches(thread.minorInternal)).toBe(core);
  expect(thread.source).toContain(`core ${core} in by the formula, tables that round the depth first print ${other} in`);
});

it.each([
  ['#1', 0.228], ['#7', 0.201], ['#21', 0.159], ['#29', 0.136], ['#36', 0.1065], ['#43', 0.089], ['#50', 0.07], ['#53', 0.0595], ['#69', 0.0292], ['#80', 0.0135], ['F', 0.257], ['U', 0.368], ['Z', 0.413],
])('drill %s, inches', (name, size) => expect(inches(findDrill(name).diameter)).toBe(size));

it.each([['7/0 SWG', 0.5], ['10 SWG', 0.128], ['16 SWG', 0.064], ['22 SWG', 0.028], ['28 SWG', 0.0148], ['40 SWG', 0.0048]])('%s, inches', (name, size) => expect(inches(rowOf('stock', name)['size'])).toBe(size));

describe('ISO 286-2, micrometres', () => {
  it.each([
    ['H7', 2, 10, 0], ['N9', 2, -4, -29], ['K7', 2, 0, -10], ['P7', 2, -6, -16], ['k6', 2, 6, 0], ['g6', 3, -2, -8], ['js6', 2, 3, -3], ['p6', 2.5, 12, 6],
    ['F8', 40, 64, 25], ['N7', 40, -8, -33], ['e8', 60, -60, -106], ['r6', 60, 60, 41], ['r6', 70, 62, 43], ['s6', 75, 78, 59], ['s6', 100, 93, 71], ['M7', 60, 0, -30], ['J7', 90, 22, -13], ['u6', 50, 86, 70], ['c11', 90, -170, -390], ['H11', 120, 220, 0],
  ])('%s at %d mm', (name, size, upper, lower) => expect(toleranceMicrometres(name, size)).toEqual({ upper, lower }));
});

describe('ANSI B4.1, thousandths of an inch: hole, shaft upper, shaft lower', () => {
  it.each([
    ['RC2', 0.3, 0.4, -0.2, -0.45], ['RC5', 0.5, 1, -1.2, -1.9], ['RC7', 1, 2, -2.5, -3.7], ['LC2', 1.5, 1, 0, -0.6], ['LC5', 0.2, 0.5, -0.15, -0.45], ['LN2', 2.5, 1.2, 2.1, 1.4], ['LN3', 0.5, 0.7, 1.4, 1],
  ])('%s at %d in', (name, size, hole, upper, lower) => {
    const limits = fitLimits(name, size * inch);
    expect([limits.hole?.upper, limits.shaft?.upper, limits.shaft?.lower].map((mm = 0) => Number((mm / 0.0254).toFixed(3)))).toEqual([hole, upper, lower]);
  });
});

describe('heads, nuts, holes for screws, centre drills', () => {
  it.each<[string, string, Readonly<Record<string, number>>, number]>([
    ['screws', 'M3 countersunk', { headTheoretical: 6.3, headMax: 5.5, height: 1.65 }, 1],
    ['screws', 'M5 socket countersunk', { headTheoretical: 11.2, height: 3.1 }, 1],
    ['screws', 'M4 cheese head', { head: 7, height: 2.6 }, 1],
    ['screws', 'M6 hexagon head', { acrossFlats: 10, height: 4 }, 1],
    ['screws', 'M5 socket cap', { head: 8.5, height: 5, key: 4 }, 1],
    ['screws', 'No. 4 countersunk', { headTheoretical: 0.225, height: 0.067 }, inch],
    ['screws', 'No. 8 fillister head', { head: 0.27, height: 0.113 }, inch],
    ['screws', 'No. 6 socket cap', { head: 0.226, key: 7 / 64 }, inch],
    ['screws', 'No. 2 machine screw nut', { acrossFlats: 0.188, thickness: 0.066 }, inch],
    ['screws', '3/8 hexagon nut', { acrossFlats: 0.562, thickness: 0.337, thinThickness: 0.227 }, inch],
    ['screws', 'M8 hexagon nut', { acrossFlats: 13, acrossCornersMin: 14.38, thickness: 6.8, thinThickness: 4 }, 1],
    ['screws', '4 BA hexagon head', { acrossFlats: 0.248 }, inch],
    ['centre-drills', 'No. 3', { pilot: 0.109, body: 0.25 }, inch],
    ['centre-drills', 'BS2', { pilot: 1 / 16, body: 3 / 16 }, inch],
    ['centre-drills', 'A 2.5 mm', { pilot: 2.5, body: 6.3 }, 1],
  ])('%s %s', (table, name, sizes, scale) => {
    const row = rowOf(table, name);
    for (const [column, size] of Object.entries(sizes)) expect(Number(row[column]) / scale, column).toBeCloseTo(size, 3);
  });

  it.each([['0-80', 'close', '#51'], ['2-56', 'normal', '#38'], ['4-40', 'loose', '#27'], ['10-32', 'close', '#5'], ['M3', 'close', '3.2 mm'], ['M8', 'normal', '9 mm']] as const)('hole for %s, %s', (thread, fit, drill) =>
    expect(clearanceDrill(findThread(thread), fit).drill.name).toBe(drill),
  );
});

it('gauges and heat', () => {
  expect(rowOf('gauges', '5 in')).toMatchObject({ gauge: 127, scaleToTheFoot: '1-1/16 in', ratio: 11.3 });
  expect(rowOf('gauges', '3-1/2 in')).toMatchObject({ gauge: 88.9, scaleToTheFoot: '3/4 in', ratio: 16 });
  expect(rowOf('gauges', '0')).toMatchObject({ gauge: 32, ratio: 43.5 });
  // 430 F is pale yellow, 540 F purple by the usual charts.
  expect(rowOf('tempering', 'faint yellow')['lowCelsius']).toBe(221);
  expect(rowOf('tempering', 'purple')).toMatchObject({ lowCelsius: 275, highCelsius: 282 });
});
