import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { parseLength } from '../../engine/units/length.js';
import { forceUnits, parseQuantity, stressUnits, surfaceSpeedUnits } from '../../engine/units/quantity.js';
import { UserError } from '../../engine/units/user-error.js';

const units = (from: string, to: string): number => Number(spawnSync('units', ['-t', '-o', '%.12g', from, to], { encoding: 'utf8' }).stdout);
const missing = spawnSync('units', ['--version']).status !== 0;

/** The definitions of the units program of the system are the second source. */
describe('units agree with the units program', () => {
  it.skipIf(missing)('lengths (skipped: the units program is not installed)', () => {
    for (const [ours, theirs] of [['1 in', 'inch'], ['10 thou', '10 mil'], ['1 um', 'micron'], ['3 cm', '3 cm'], ['1 ft', 'foot']] as const) {
      expect(parseLength(ours)).toBeCloseTo(units(theirs, 'mm'), 10);
    }
  });
  it.skipIf(missing)('forces, stresses and speeds (skipped: the units program is not installed)', () => {
    expect(parseQuantity('27 lbf', forceUnits, 'load')).toBeCloseTo(units('27 lbf', 'N'), 8);
    expect(parseQuantity('2 kgf', forceUnits, 'load')).toBeCloseTo(units('2 kgf', 'N'), 8);
    expect(parseQuantity('51 ksi', stressUnits, 'yield')).toBeCloseTo(units('51000 psi', 'MPa'), 6);
    expect(parseQuantity('80 psi', stressUnits, 'pressure')).toBeCloseTo(units('80 psi', 'MPa'), 9);
    expect(parseQuantity('100 fpm', surfaceSpeedUnits, 'speed')).toBeCloseTo(units('100 ft/min', 'm/min'), 9);
  });
});

describe('a force or a stress', () => {
  it('needs its unit', () => {
    expect(() => parseQuantity('120', forceUnits, 'load')).toThrow(new UserError('load "120" has no unit: allowed are N, kN, lbf, lb, kgf, kg.'));
    expect(() => parseQuantity('120 stone', forceUnits, 'load')).toThrow('load "120 stone" has the unknown unit "stone": allowed are N, kN, lbf, lb, kgf, kg.');
    expect(() => parseQuantity('much', stressUnits, 'yield')).toThrow('yield "much" is not understood: write a number and a unit');
  });
});
