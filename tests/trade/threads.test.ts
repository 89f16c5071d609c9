import { describe, expect, it } from 'vitest';
import { findThread, nearestThreads, threads, type Thread } from '../../engine/trade/threads.js';
import { published } from '../published/read-csv.js';

const inch = 25.4;
const nut = (thread: Thread) => thread.classes.find(({ of }) => of === 'minorInternal');

describe('Unified threads against ASME B1.1', () => {
  it.each(published('threads-unified').map((row) => [`${row.text('designation')} ${row.text('series')}`, row] as const))('%s', (name, row) => {
    const thread = findThread(name);
    expect(thread.major).toBeCloseTo(row.number('major_in') * inch, 9);
    expect(thread.threadsPerInch).toBe(row.number('tpi'));
    expect(thread.pitchDiameter).toBeCloseTo(row.number('pitch_dia_basic_in') * inch, 6);
    expect(nut(thread)?.min).toBeCloseTo(row.number('minor_2B_min_in') * inch, 6);
    expect(nut(thread)?.max).toBeCloseTo(row.number('minor_2B_max_in') * inch, 6);
    expect(thread.minorExternal).toBeCloseTo(row.number('minor_ext_design_UNR_in_formula') * inch, 6);
    // Areas are printed to three figures with a spread in the last.
    expect(thread.stressArea / inch ** 2 / row.number('stress_area_in2')).toBeCloseTo(1, 2);
  });

  // ASME B1.1 Table 2, class 2A limits of 1/4-20 and 1/4-28 and class 2B of 1/4-20 (memory), inches.
  it.each([
    ['1/4-20', 'pitchDiameterExternal', 0.2127, 0.2164],
    ['1/4-20', 'majorExternal', 0.2408, 0.2489],
    ['1/4-20', 'pitchDiameterInternal', 0.2175, 0.2224],
    ['1/4-28', 'pitchDiameterExternal', 0.2225, 0.2258],
    ['10-32', 'pitchDiameterExternal', 0.1658, 0.1688],
    ['4-40', 'pitchDiameterExternal', 0.0925, 0.095],
  ] as const)('%s %s', (name, of, min, max) => {
    const limits = findThread(name).classes.find((row) => row.of === of);
    expect((limits?.min ?? 0) / inch).toBeCloseTo(min, 3.7);
    expect((limits?.max ?? 0) / inch).toBeCloseTo(max, 3.7);
  });
});

// ASME B1.1 Table 3, stress areas of its Table 5 (memory): pitch diameter, 2B minor least and most, in; area, in2.
describe('large Unified threads against ASME B1.1', () => {
  it.each([
    ['1-8 UNC', 0.9188, 0.865, 0.89, 0.606],
    ['1-12 UNF', 0.9459, 0.91, 0.928, 0.663],
    ['1-20 UNEF', 0.9675, 0.946, 0.957, 0.711],
    ['1-1/8-7 UNC', 1.0322, 0.97, 0.998, 0.763],
    ['1-1/4-12 UNF', 1.1959, 1.16, 1.178, 1.073],
    ['1-3/8-6 UNC', 1.2667, 1.195, 1.225, 1.155],
    ['1-1/2-6 UNC', 1.3917, 1.32, 1.35, 1.405],
    ['1-1/2-8 UN', 1.4188, 1.365, 1.39, 1.492],
    ['1-3/4-5 UNC', 1.6201, 1.534, 1.568, 1.9],
    ['2-4.5 UNC', 1.8557, 1.759, 1.795, 2.5],
    ['2-12 UN', 1.9459, 1.91, 1.928, 2.89],
  ] as const)('%s', (name, pitchDiameter, least, most, area) => {
    const thread = findThread(name);
    expect(thread.designation).toBe(name);
    expect(thread.pitchDiameter / inch).toBeCloseTo(pitchDiameter, 3.9);
    expect(nut(thread)!.min / inch).toBeCloseTo(least, 6);
    expect(nut(thread)!.max / inch).toBeCloseTo(most, 6);
    expect(thread.stressArea / inch ** 2 / area).toBeCloseTo(1, 2);
  });
  // ASME B18.2.2 and B18.2.1: one and a half times the diameter, to a sixteenth.
  it('has hexagons of the standard', () => expect(['1-8', '1-1/8-7', '1-3/8-6', '1-1/2-6', '1-3/4-5', '2-4.5'].map((name) => findThread(name).acrossFlats! / inch)).toEqual([1.5, 1.6875, 2.0625, 2.25, 2.625, 3].map((size) => expect.closeTo(size, 9))));
  it('is found with the dash where its diameter has one too', () => {
    expect(findThread('1-1/8-7').designation).toBe('1-1/8-7 UNC');
    expect(findThread('1-1/8x7').designation).toBe('1-1/8 BSW');
    expect(findThread('1-64').major).toBeCloseTo(0.073 * inch, 9);
  });
  // Modelmakers' screws: 0.047 in by 90 to the inch and so on; the form is that of the series.
  it.each([['00-90', 0.047, 90], ['000-120', 0.034, 120], ['0000-160', 0.021, 160]] as const)('%s of the trade', (name, major, tpi) => {
    expect(findThread(name).major / inch).toBeCloseTo(major, 9);
    expect(findThread(name).pitchDiameter / inch).toBeCloseTo(major - 0.649519 / tpi, 3.9);
  });
});

// ISO 724, ISO 965-2 (minor of 6H at most) and ISO 898-1 (stress area), hexagon ISO 272; memory.
describe('large metric threads against ISO 724, ISO 965 and ISO 898', () => {
  it.each([
    ['M24', 3, 22.051, 20.752, 20.319, 21.252, 353, 36],
    ['M27', 3, 25.051, 23.752, 23.319, 24.252, 459, 41],
    ['M30', 3.5, 27.727, 26.211, 25.706, 26.771, 561, 46],
    ['M36', 4, 33.402, 31.67, 31.093, 32.27, 817, 55],
    ['M42', 4.5, 39.077, 37.129, 36.479, 37.799, 1121, 65],
    ['M48', 5, 44.752, 42.587, 41.866, 43.297, 1473, 75],
    ['M52', 5, 48.752, 46.587, 45.866, 47.297, 1758, 80],
    ['M30x2', 2, 28.701, 27.835, 27.546, 28.21, 621, 46],
  ] as const)('%s', (name, pitch, pitchDiameter, minor, root, most, area, flats) => {
    const thread = findThread(name);
    expect([thread.pitch, thread.pitchDiameter, thread.minorInternal, thread.minorExternal, thread.acrossFlats]).toEqual([pitch, pitchDiameter, minor, root, flats]);
    expect(nut(thread)!.max).toBeCloseTo(most, 6);
    expect(thread.stressArea / area).toBeCloseTo(1, 2);
  });
  it.each([['M24', [21.803, 22.003]], ['M36', [33.118, 33.342]]] as const)('%s has the pitch diameters of 6g', (name, limits) => {
    const found = findThread(name).classes.find(({ of }) => of === 'pitchDiameterExternal')!;
    expect([found.min, found.max]).toEqual(limits);
  });
});

// ISO 1501: S 0.8 has a pitch of 0.2, pitch diameter 0.8 - 0.6495 P = 0.6701, nut 0.8 - 0.96 P = 0.608 (memory).
it('miniature threads below M1', () => expect(findThread('S0.8')).toMatchObject({ pitch: 0.2, pitchDiameter: 0.6701, minorInternal: 0.608, series: 'miniature' }));

describe('metric threads against ISO 724 and ISO 965', () => {
  it.each(published('threads-metric').map((row) => [row.text('designation'), row] as const))('%s', (name, row) => {
    const thread = findThread(name);
    expect(thread.pitch).toBe(row.number('pitch_mm'));
    expect(thread.major).toBe(row.number('major_mm'));
    expect(thread.pitchDiameter).toBe(row.number('pitch_dia_mm'));
    expect(thread.minorInternal).toBe(row.number('minor_int_basic_mm'));
    expect(thread.minorExternal).toBe(row.number('minor_ext_d3_mm'));
    expect(nut(thread)?.max).toBe(row.number('minor_int_max_mm'));
    expect(nut(thread)?.name).toBe(row.text('minor_tol_class'));
    expect(thread.stressArea / row.number('stress_area_mm2')).toBeCloseTo(1, 2);
  });
});

/** ISO 965-2 limits of usual threads (memory): pitch diameter 6g and 6H, major 6g. */
describe('metric classes against ISO 965-2', () => {
  it.each([
    ['M3', [2.58, 2.655], [2.675, 2.775], [2.874, 2.98]],
    ['M4', [3.433, 3.523], [3.545, 3.663], [3.838, 3.978]],
    ['M5', [4.361, 4.456], [4.48, 4.605], [4.826, 4.976]],
    ['M6', [5.212, 5.324], [5.35, 5.5], [5.794, 5.974]],
    ['M8', [7.042, 7.16], [7.188, 7.348], [7.76, 7.972]],
    ['M10', [8.862, 8.994], [9.026, 9.206], [9.732, 9.968]],
    ['M12', [10.679, 10.829], [10.863, 11.063], [11.701, 11.966]],
  ] as const)('%s', (name, screw, nutPitch, major) => {
    const limits = (of: string): readonly number[] => {
      const found = findThread(name).classes.find((row) => row.of === of);
      return [found?.min ?? 0, found?.max ?? 0];
    };
    expect(limits('pitchDiameterExternal')).toEqual(screw);
    expect(limits('pitchDiameterInternal')).toEqual(nutPitch);
    expect(limits('majorExternal')).toEqual(major);
  });
  it('keeps to the formulas of the standard: 90 P^0.4 d^0.1 within a preferred number, nuts 1.32 times as much', () => {
    for (const thread of threads.filter(({ series }) => series.startsWith('metric'))) {
      const screw = thread.classes.find(({ of }) => of === 'pitchDiameterExternal');
      const width = 1000 * ((screw?.max ?? 0) - (screw?.min ?? 0));
      expect(width / (90 * thread.pitch ** 0.4 * thread.major ** 0.1), thread.designation).toBeGreaterThan(0.9);
      expect(width / (90 * thread.pitch ** 0.4 * thread.major ** 0.1), thread.designation).toBeLessThan(1.1);
      const nutLimits = thread.classes.find(({ of }) => of === 'pitchDiameterInternal');
      if (nutLimits !== undefined) expect((1000 * (nutLimits.max - nutLimits.min)) / width, thread.designation).toBeCloseTo(1.34, 1.2);
    }
  });
});

describe('British Association threads against BS 93', () => {
  it.each(published('threads-ba').map((row) => [row.text('designation'), row] as const))('%s', (name, row) => {
    const thread = findThread(name);
    expect(thread.pitch).toBe(row.number('pitch_mm'));
    expect(thread.major).toBe(row.number('major_mm'));
    expect(thread.depth).toBe(row.number('depth_mm'));
    expect(thread.pitchDiameter).toBe(row.number('effective_mm'));
    expect(thread.minorInternal).toBe(row.number('core_mm'));
    if (row.text('hex_across_flats_in') !== '') expect((thread.acrossFlats ?? 0) / inch).toBeCloseTo(row.number('hex_across_flats_in'), 6);
  });

  it('keeps the rule of the series: P = 0.9^n, D = 6 P^1.2, two figures, up to 12', () => {
    for (let number = 0; number <= 12; number += 1) {
      const thread = findThread(`${number} BA`);
      const pitch = Number((0.9 ** number).toPrecision(2));
      expect(thread.pitch).toBe(pitch);
      expect(thread.major).toBe(Number((6 * pitch ** 1.2).toPrecision(2)));
    }
  });
});

describe('threads of Whitworth form against BS 84', () => {
  it.each(published('threads-whitworth-me').map((row) => [`${row.text('nominal')}x${row.text('tpi')} ${row.text('series')}`, row] as const))('%s', (name, row) => {
    const thread = findThread(row.text('series') === 'ME' ? name : `${row.text('nominal')} ${row.text('series')}`);
    expect(thread.threadsPerInch).toBe(row.number('tpi'));
    expect(thread.major / inch).toBeCloseTo(row.number('major_in'), 6);
    expect(thread.depth / inch).toBeCloseTo(row.number('depth_in'), 5);
    expect(thread.pitchDiameter / inch).toBeCloseTo(row.number('effective_in'), 6);
    expect(thread.minorInternal / inch).toBeCloseTo(row.number('core_in'), 6);
    expect(thread.formAngle).toBe(55);
  });
});

describe('a thread by name', () => {
  it.each([
    ['0-80', '0-80 UNF'],
    ['0-80 UNF', '0-80 UNF'],
    ['#0-80', '0-80 UNF'],
    ['M3', 'M3x0.5'],
    ['m3 x .5', 'M3x0.5'],
    ['M3-0.50', 'M3x0.5'],
    ['4BA', '4 BA'],
    ['4 ba', '4 BA'],
    ['1/4x40', '1/4x40 ME'],
    ['1/4-40 ME', '1/4x40 ME'],
    ['ME 1/4-40', '1/4x40 ME'],
    ['1/4" x 40', '1/4x40 ME'],
    ['1/4-20', '1/4-20 UNC'],
    ['1/4x20', '1/4-20 UNC'],
    ['1/4 BSW', '1/4 BSW'],
    ['1/4-32', '1/4-32 UNEF'],
    ['1/4x32', '1/4x32 ME'],
    ['1/4x26', '1/4 BSF'],
  ])('%s is %s', (name, designation) => {
    expect(findThread(name).designation).toBe(designation);
  });

  it('comes back by its own designation and is the only one of it', () => {
    for (const thread of threads) expect(findThread(thread.designation)).toBe(thread);
    expect(new Set(threads.map(({ designation }) => designation)).size).toBe(threads.length);
  });

  it('that is unknown gets the nearest', () => {
    expect(() => findThread('0-90')).toThrow('thread "0-90" is not in the tables (Unified 0000-160 to 2 in, M1 to M52, S0.5 to S0.9, 0 to 16 BA, Whitworth form to 2 in); the nearest is 00-90.');
    expect(() => findThread('M15')).toThrow('the nearest is M14x2.');
    expect(() => findThread('nonsense thread')).toThrow(/Whitworth form to 2 in\)\.$/);
  });

  it('is ordered by how near its diameter is', () => {
    expect(nearestThreads(2.43, 'british-association').slice(0, 2).map(({ designation }) => designation)).toEqual(['7 BA', '8 BA']);
    expect(nearestThreads(2.43)[0]?.designation).toBe('3/32 BSW');
  });
});

describe('every thread', () => {
  it('has its diameters in order and a source', () => {
    for (const { major, pitchDiameter, minorInternal, minorExternal, stressArea, source, classes } of threads) {
      expect(major).toBeGreaterThan(pitchDiameter);
      expect(pitchDiameter).toBeGreaterThan(minorInternal);
      expect(minorInternal).toBeGreaterThanOrEqual(minorExternal);
      expect(stressArea).toBeGreaterThan((Math.PI / 4) * minorExternal ** 2 * 0.99);
      expect(stressArea).toBeLessThan((Math.PI / 4) * pitchDiameter ** 2);
      expect(source.length).toBeGreaterThan(10);
      for (const { min, max } of classes) expect(max).toBeGreaterThan(min);
    }
  });
});
