import { describe, expect, it } from 'vitest';
import { reckon, type Json } from '../../engine/trade/sums/index.js';
import { columnLoad } from '../../engine/trade/sums/column.js';
import { pointLength } from '../../engine/trade/sums/blind-hole.js';
import { tapStrength, tapTorque } from '../../engine/trade/sums/tap-torque.js';
import { engagementLength } from '../../engine/trade/sums/thread-engagement.js';
import { findThread } from '../../engine/trade/threads.js';
import { published } from '../published/read-csv.js';

const inch = 25.4;
const result = (name: string, texts: Readonly<Record<string, string>>) => reckon(name, texts).result;
const number = (value: Json | undefined): number => (typeof value === 'number' ? value : Number.NaN);

describe('measuring sums against worked tables', () => {
  it('three wires', () => {
    for (const row of published('three-wire')) {
      const metric = row.text('thread').endsWith('(mm)');
      const unit = metric ? 'mm' : 'in';
      const name = row.text('thread').replace(/ \((in|mm)\)| UN\b/g, '').replace(/(BSF) \d+/, '$1');
      const { overWires, bestWire } = result('three-wire', { thread: name, wire: `${row.text('best_wire')} ${unit}` });
      const scale = metric ? 1 : inch;
      expect(Math.abs(number(overWires) / scale - row.number('measure_over_wires')), name).toBeLessThan(metric ? 0.0002 : 0.00004);
      expect(number(bestWire) / scale).toBeCloseTo(row.number('best_wire'), 5);
    }
  });
  it('sine bars', () => {
    for (const row of published('sine-bar')) {
      const { height } = result('sine', { angle: row.text('angle_deg'), centres: `${row.text('length')} mm` });
      expect(number(height)).toBeCloseTo(row.number('stack_height'), 5);
    }
  });
  it('dovetails over and between rollers', () => {
    for (const row of published('dovetail-over-rolls')) {
      const { measure } = result('dovetail', { kind: row.text('case').split(',')[0] ?? '', width: `${row.text('width_at_corner')} mm`, angle: row.text('angle_deg'), roller: `${row.text('roll_dia')} mm` });
      expect(number(measure)).toBeCloseTo(row.number('measure'), 4.9);
    }
  });
  it('tapers over rollers, there and back', () => {
    for (const row of published('taper-over-rolls')) {
      const common = { roller: `${row.text('roll_dia')} in`, blocks: `${row.text('gauge_block_H')} in` };
      const there = result('taper-rollers', { ...common, small: `${row.text('small_end_dia')} in`, angle: String(2 * row.number('half_angle_deg')) });
      expect(number(there['low']) / inch).toBeCloseTo(row.number('M1'), 4);
      expect(number(there['high']) / inch).toBeCloseTo(row.number('M2'), 4);
      const back = result('taper-rollers', { ...common, low: `${number(there['low'])} mm`, high: `${number(there['high'])} mm` });
      expect(number(back['half'])).toBeCloseTo(row.number('half_angle_deg'), 6);
      expect(number(back['small']) / inch).toBeCloseTo(row.number('small_end_dia'), 6);
    }
  });
});

describe('hole sums against worked tables', () => {
  it('bolt circles', () => {
    for (const row of published('bolt-circles')) {
      const { holes } = result('bolt-circle', { holes: row.text('holes'), diameter: `${row.text('pcd')} mm`, start: row.text('start_deg') });
      const hole = (holes as readonly { readonly x: number; readonly y: number }[])[row.number('hole') - 1];
      expect(hole?.x).toBeCloseTo(row.number('x'), 4.9);
      expect(hole?.y).toBeCloseTo(row.number('y'), 4.9);
    }
  });
  it('chords', () => {
    for (const row of published('chord-factors')) {
      const { chord, angle } = result('chord', { holes: row.text('holes'), diameter: '1 mm' });
      expect(number(chord)).toBeCloseTo(row.number('chord_per_unit_diameter'), 5.9);
      expect(number(angle)).toBeCloseTo(row.number('angle_deg'), 4.9);
    }
  });
  it('countersinks', () => {
    for (const row of published('countersink-depth')) {
      const { depth } = result('countersink', { angle: row.text('angle_deg'), diameter: `${row.text('top_dia')} mm`, hole: `${row.text('hole_dia')} mm` });
      expect(number(depth)).toBeCloseTo(row.number('depth'), 4.9);
    }
  });
  it('drill points', () => {
    for (const row of published('drill-point-length')) expect(pointLength(1, row.number('point_angle_deg'))).toBeCloseTo(row.number('k'), 3.9);
  });
});

describe('strength sums against worked tables', () => {
  it('columns, in whatever units', () => {
    for (const row of published('column-examples')) {
      const { load, regime, limit } = columnLoad(row.number('area'), row.number('slenderness'), row.number('Sy'), row.number('E'));
      expect(regime).toBe(row.text('regime'));
      expect(limit).toBeCloseTo(row.number('Cc'), 1.9);
      // Areas are printed to four decimals: that of the thinnest rod is uncertain by 0.2 %.
      expect(load / row.number('Pcr')).toBeCloseTo(1, 2.3);
    }
  });
  it('columns by the sum: a 1/4 x 1/8 rod 4 in long gives way at 740.4 lbf', () => {
    const { criticalLoad, regime } = result('column', { length: '4 in', width: '1/4 in', depth: '1/8 in', yield: '54 ksi', modulus: '29500 ksi' });
    expect(number(criticalLoad) / 4.4482216152605).toBeCloseTo(740.4, 0);
    expect(regime).toBe('Euler');
  });
  it('pins in shear and bearing', () => {
    for (const row of published('pin-examples')) {
      const [force, length] = row.text('units').split(',');
      const stress = force === 'lbf' ? 4.4482216152605 / inch ** 2 : 1;
      const texts = { force: `${row.text('force')} ${force ?? ''}`, diameter: `${row.text('pin_dia')} ${length ?? ''}` };
      expect(number(result('shear', { ...texts, planes: '1' })['stressMPa']) / stress).toBeCloseTo(row.number('single_shear'), 1.9);
      expect(number(result('shear', { ...texts, planes: '2' })['stressMPa']) / stress).toBeCloseTo(row.number('double_shear'), 1.9);
      const { pressureMPa } = result('bearing-pressure', { ...texts, length: `${row.text('bearing_length')} ${length ?? ''}` });
      expect(number(pressureMPa) / stress).toBeCloseTo(row.number('bearing_pressure'), 1.9);
    }
  });
  it('tapping torque by the tap maker\'s equation', () => {
    // Cutting force and factor K of a straight-fluted tap with a lead of five threads, as that page gives them.
    const work: Readonly<Record<string, readonly [number, number]>> = { 'steel Ck15': [3600, 1.35], 'brass CuZn40': [2300, 1.6], 'grey iron GG25': [2900, 1.25] };
    for (const row of published('tapping-torque-examples')) {
      const [force, factor] = work[row.text('material')] ?? [Number.NaN, Number.NaN];
      const torque = tapTorque(findThread(row.text('tap')), row.number('hole_mm'), force, factor);
      expect(Math.abs(torque - row.number('T_formula_A_Nm')), `${row.text('tap')} ${row.text('material')}`).toBeLessThan(0.0006 + 0.0005 * torque);
    }
  });
  it('strength of taps by the model with the smaller web and strength', () => {
    for (const row of published('tap-torsion-model').filter((candidate) => candidate.number('effective_dia_ratio') === 0.6 && candidate.number('tau_MPa') === 900)) {
      expect(tapStrength(findThread(row.text('tap')))).toBeCloseTo(row.number('torque_Nm'), 2.9);
    }
  });
  it('K factors of the tap maker, by their effect on the torque', () => {
    const thread = { coarse: 'M6', fine: 'M10x1' } as const;
    const materials: Readonly<Record<string, string>> = { steel: 'EN8', brass: 'brass', 'cast iron / aluminium': 'cast iron' };
    const taps: Readonly<Record<string, string>> = { 'straight flute, 5-thread lead': 'taper', 'straight flute, 1.5-thread lead': 'bottoming', 'spiral flute': 'spiral-flute', 'spiral point': 'spiral-point' };
    const holes = { coarse: '5 mm', fine: '9 mm' } as const;
    for (const row of published('tapping-K-factors')) {
      for (const kind of ['coarse', 'fine'] as const) {
        if (row.text(`K_${kind}`) === '') continue;
        const material = materials[row.text('material')] ?? '';
        const kc = { EN8: 3900, brass: 2300, 'cast iron': 2900 }[material] ?? Number.NaN;
        const { torqueNm } = result('tap-torque', { thread: thread[kind], material, drill: holes[kind], tap: taps[row.text('tap_type')] ?? '' });
        const plain = tapTorque(findThread(thread[kind]), Number(holes[kind].split(' ')[0]), kc, 1);
        expect(number(torqueNm) / plain, `${row.text('tap_type')} ${material} ${kind}`).toBeCloseTo(row.number(`K_${kind}`), 5);
      }
    }
  });
  it('engagement of equal strength by the length-of-engagement formula', () => {
    for (const row of published('thread-engagement').filter((candidate) => candidate.text('unit') === 'in, equal-strength length')) {
      const name = row.text('case').split(' 2A')[0] ?? '';
      expect(engagementLength(findThread(name), 400, 400).length / inch, name).toBeCloseTo(row.number('value'), 3);
    }
  });
  it('engagement stays under the rules of thumb', () => {
    const rule = (name: string): number => published('thread-engagement').find((row) => row.text('case') === name)?.number('value') ?? 0;
    for (const [nut, name] of [['bright mild steel', 'steel in steel of equal strength'], ['aluminium', 'steel screw in aluminium']] as const) {
      for (const thread of ['M3', '6-32', '4BA', '1/4x40']) expect(number(result('thread-engagement', { thread, nut })['diameters']), `${thread} ${nut}`).toBeLessThanOrEqual(rule(name));
    }
  });
});

describe('spindle speeds against the worked lines', () => {
  // 25 m/min on 12 mm is 663, 80 ft/min on 0.5 in is 611 a minute.
  it.each([
    ['25 m/min', '12 mm', 663],
    ['80 fpm', '0.5 in', 611],
  ])('%s on %s', (surface, diameter, rpm) => {
    expect(Math.round(number(result('speed', { material: 'steel', diameter, surface })['rpm']))).toBe(rpm);
  });
  it('thermal growth: 50 mm of brass 80 K hotter grows 0.082 mm at 20.5, 0.0836 at 20.9 millionths', () => {
    expect(number(result('expansion', { length: '50 mm', material: 'brass', rise: '80 K' })['growth']) / 0.082).toBeCloseTo(20.9 / 20.5, 6);
  });
});
