import { describe, expect, it } from 'vitest';
import { cuttingSpeed, feedOperations, feedRange, speedOperations } from '../../engine/trade/cutting.js';
import { speedFactors } from '../../engine/trade/data/cutting.js';
import { findMaterial, materials } from '../../engine/trade/materials.js';
import { published } from '../published/read-csv.js';

/** Which material of ours a published row is about; rows of other grades are not listed. */
const properties: Readonly<Record<string, string>> = {
  '11SMn30 (EN1A) +C, 16-40 mm': 'EN1A',
  '1018 hot rolled': '1018 hot rolled',
  '1020 hot rolled': '1020 hot rolled',
  'silver steel BS 1407 annealed': 'silver steel',
  'O1 tool steel annealed': 'O1',
  '303 stainless annealed bar (typical)': '303',
  'C51000 phosphor bronze (PB102) H02 1/2 in rod': 'PB102',
  'SAE 660 / C93200 sand cast minimum': 'SAE 660',
  'grey iron class 30': 'grey cast iron',
  '2011-T3': '2011',
  'copper C101/C11000 annealed': 'copper',
  'acetal homopolymer': 'acetal',
  'CZ121 / CW614N R430': 'CZ121',
};

describe('properties of materials', () => {
  const rows = published('material-properties').filter((row) => properties[row.text('material')] !== undefined);
  it('covers the materials that are in both', () => {
    expect(rows).toHaveLength(Object.keys(properties).length);
  });
  it.each(rows.map((row) => [row.text('material'), row] as const))('%s', (name, row) => {
    const material = findMaterial(properties[name] ?? '');
    const within = (column: string, value: number, part: number): void => {
      const [low = Number.NaN, high = low] = row.text(column).split('-').map(Number);
      if (row.text(column) === '') return;
      expect(value, column).toBeGreaterThanOrEqual(low * (1 - part));
      expect(value, column).toBeLessThanOrEqual(high * (1 + part));
    };
    within('density_kg_m3', material.density, 0.005);
    within('modulus_GPa', material.modulus, 0.01);
    within('cte_um_m_K', material.expansion, 0.02);
    within('yield_or_proof_MPa', material.yieldStrength, 0.06);
    within('uts_MPa', material.tensileStrength, 0.06);
  });
});

describe('cutting speeds', () => {
  const ours: Readonly<Record<string, string>> = {
    'free-cutting steel': 'EN1A',
    'silver steel annealed': 'silver steel',
    'stainless 303': '303',
    'cast iron': 'cast iron',
    aluminium: 'aluminium',
    brass: 'brass',
    gunmetal: 'gunmetal',
    'alloy steel': 'alloy steel',
    'stainless steel': 'stainless steel',
  };
  const rows = published('cutting-speeds').filter((row) => ours[row.text('material')] !== undefined && row.text('condition') === '');
  it('overlap every range that workshop texts print', () => {
    expect(rows.length).toBeGreaterThan(12);
    for (const row of rows) {
      const [low = 0, high = low] = row.text('speed_m_min').split('-').map(Number);
      const tool = row.text('tool') === 'carbide' ? 'carbide' : 'hss';
      const range = cuttingSpeed(findMaterial(ours[row.text('material')] ?? ''), tool, row.text('operation'));
      expect(range[0], `${row.text('material')} ${row.text('operation')} ${tool}`).toBeLessThanOrEqual(high);
      expect(range[1], `${row.text('material')} ${row.text('operation')} ${tool}`).toBeGreaterThanOrEqual(low);
    }
  });
  it('never pass what the data books allow the same steel for light cuts', () => {
    for (const [name, condition, material] of [['free-cutting steel 1213/1215', 'cold drawn 150-200 HB', 'EN1A'], ['tool steel O1', 'annealed 175-225 HB', 'O1']] as const) {
      const row = published('cutting-speeds').find((candidate) => candidate.text('material') === name && candidate.text('condition') === condition);
      expect(cuttingSpeed(findMaterial(material), 'hss', 'turning')[1]).toBeLessThanOrEqual(row?.number('speed_m_min') ?? 0);
    }
  });
  it('of other operations keep to the rules of thumb', () => {
    const names: Readonly<Record<string, string>> = { 'parting-off': 'parting', 'form-tool turning': 'forming', knurling: 'knurling' };
    for (const row of published('cutting-factors').filter((candidate) => candidate.text('relative_to') === 'turning speed')) {
      const operation = names[row.text('operation').replace(/ speed$/, '')];
      if (operation === undefined) continue;
      expect(speedFactors[operation], operation).toBeGreaterThanOrEqual(row.number('factor_low'));
      expect(speedFactors[operation], operation).toBeLessThanOrEqual(row.number('factor_high'));
    }
  });
  it('grow from high-speed steel to carbide for every material and operation', () => {
    for (const material of materials) {
      for (const operation of speedOperations) {
        const [hss, carbide] = [cuttingSpeed(material, 'hss', operation), cuttingSpeed(material, 'carbide', operation)];
        expect(hss[0]).toBeLessThan(hss[1]);
        expect(carbide[0]).toBeGreaterThan(hss[0]);
      }
    }
    expect(() => cuttingSpeed(findMaterial('brass'), 'hss', 'whittling')).toThrow('operation "whittling" has no cutting speed: choose turning');
  });
});

describe('feeds', () => {
  const upTo: Readonly<Record<string, number>> = { '1/8': 0.125, '1/2': 0.5, '1': 1, '': 2 };
  it('of drilling as two pages agree', () => {
    for (const row of published('feeds').filter((candidate) => candidate.text('operation') === 'drilling')) {
      const [low, high] = feedRange('drilling', (upTo[row.text('dia_to_in')] ?? Number.NaN) * 25.4);
      expect(low / 25.4).toBeCloseTo(row.number('feed_low_in'), 9);
      expect(high / 25.4).toBeCloseTo(row.number('feed_high_in'), 9);
    }
  });
  it('rise with the diameter', () => {
    for (const operation of feedOperations) {
      const lows = [1, 4, 8, 20, 30].map((diameter) => feedRange(operation, diameter)[0]);
      expect(lows).toEqual([...lows].sort((a, b) => a - b));
    }
    expect(() => feedRange('whittling', 5)).toThrow('operation "whittling" has no feed: choose drilling');
  });
});

describe('bearing pressures and cutting energies', () => {
  it('lie within what machines in use carry', () => {
    const [axle, pin] = ['locomotive driving-axle journal', 'locomotive crosshead (wrist) pin'].map((name) => published('bearing-pressures').find((row) => row.text('application') === name));
    for (const { bearingPressure } of materials) {
      expect(bearingPressure).toBeGreaterThan(axle?.number('high_MPa') ?? 0);
      expect(bearingPressure).toBeLessThan(pin?.number('low_MPa') ?? 0);
    }
  });
  it('of unit power tables', () => {
    const energy = (name: string): number => published('tapping-and-cutting-energy').find((row) => row.text('material') === name)?.number('value') ?? Number.NaN;
    expect(findMaterial('EN8').cuttingEnergy).toBe(energy('carbon steel 201-250 HB'));
    expect(findMaterial('cast iron').cuttingEnergy).toBe(energy('cast iron 175-250 HB'));
    expect(findMaterial('303').cuttingEnergy).toBe(energy('stainless 150-250 HB'));
    expect(findMaterial('aluminium').cuttingEnergy).toBe(energy('aluminium 50-100 HB'));
    expect(findMaterial('phosphor bronze').cuttingEnergy).toBe(energy('bronze 100-150 HB'));
    expect(findMaterial('silver steel').tapCutting).toBe(energy('C105W2 175 HB (nearest to silver steel)'));
    expect(findMaterial('EN8').tapCutting).toBe(energy('Ck45 188 HB'));
    expect(findMaterial('303').tapCutting).toBe(energy('X6CrNi18-10 209 HB'));
    expect(findMaterial('cast iron').tapCutting).toBe(energy('GG-25 193 HB'));
  });
});

describe('a material by name', () => {
  it('or by any trade name, once', () => {
    for (const material of materials) for (const name of [material.name, ...material.aliases]) expect(findMaterial(name).name, name).toBe(material.name);
  });
  it('that is unknown is refused with the nearest', () => {
    expect(() => findMaterial('silver steal')).toThrow(/^material "silver steal" is not in the table: allowed are free-cutting mild steel, .*; the nearest is silver steel\.$/);
  });
});
