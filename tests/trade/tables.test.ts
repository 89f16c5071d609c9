import { describe, expect, it } from 'vitest';
import { findTable, tables, type TableRow } from '../../engine/trade/tables/index.js';
import { published, type PublishedRow } from '../published/read-csv.js';

const inch = 25.4;

function rows(table: string, filter?: string): readonly TableRow[] {
  const answer = findTable(table).find(filter);
  return answer.kind === 'rows' ? answer.rows : [answer.row];
}

function only(table: string, filter: string): TableRow {
  const found = rows(table, filter);
  expect(found, `${table} ${filter}`).toHaveLength(1);
  return found[0] as TableRow;
}

const near = (value: unknown, wanted: number, what: string): void => {
  expect(Math.abs(Number(value) - wanted), what).toBeLessThan(0.006);
};

describe('stock', () => {
  it('has every size that suppliers list', () => {
    for (const row of published('stock-sizes')) {
      const form = row.text('form').startsWith('silver steel') ? 'silver steel' : row.text('form');
      const found = rows('stock', row.text('size')).find((candidate) => candidate['form'] === form);
      expect(found, `${form} ${row.text('size')}`).toBeDefined();
      const [size = '', width] = row.text('mm').split(' x ');
      near(found?.['size'], Number(size), row.text('size'));
      if (width !== undefined) near(found?.['width'], Number(width), row.text('size'));
    }
  });
  it('has the wire gauges', () => {
    for (const row of published('gauges-swg-awg')) expect(Number(only('stock', row.text('gauge'))['size'])).toBeCloseTo(row.number('mm'), 2.9);
  });
});

describe('screws and nuts', () => {
  const inInches = (row: PublishedRow, found: TableRow, pairs: readonly (readonly [string, string])[]): void => {
    for (const [column, ours] of pairs) expect(Number(found[ours]) / inch, `${found.name} ${ours}`).toBeCloseTo(row.number(column), 5);
  };
  it('countersunk heads of ASME B18.6.3', () => {
    for (const row of published('countersunk-heads-inch')) {
      const found = only('screws', `${row.text('screw')} countersunk`);
      expect(found['angle']).toBe(82);
      inInches(row, found, [['major_in', 'major'], ['head_max_2013_in', 'headMax'], ['head_min_2013_in', 'headMin'], ['height_ref_in', 'height'], ['head_max_sharp_1972_in', 'headTheoretical']]);
    }
  });
  it('countersunk heads of ISO 7046 and 10642, of height half the difference of the diameters', () => {
    for (const row of published('countersunk-heads-metric')) {
      const found = only('screws', `${row.text('screw')} ${row.text('standard').startsWith('ISO 10642') ? 'socket countersunk' : 'countersunk'}`);
      expect([found['angle'], found['headTheoretical'], found['headMin'], found['height']]).toEqual(['angle_deg', 'head_theoretical_max_mm', 'head_actual_min_mm', 'height_max_mm'].map(row.number));
      if (row.text('head_actual_max_mm') !== '') expect(found['headMax']).toBe(row.number('head_actual_max_mm'));
    }
    for (const found of rows('screws', 'countersunk').filter((row) => row['angle'] === 90)) {
      if (found['major'] === undefined) continue;
      expect(Math.abs(Number(found['height']) - (Number(found['headTheoretical']) - Number(found['major'])) / 2), found.name).toBeLessThan(0.06);
    }
  });
  it('nuts of ASME B18.6.3 and B18.2.2', () => {
    for (const row of published('nuts-machine-screw-inch')) {
      inInches(row, only('screws', `${row.text('size')} machine screw nut`), [['flats_max_in', 'acrossFlats'], ['flats_min_in', 'acrossFlatsMin'], ['corners_max_in', 'acrossCornersMax'], ['thickness_max_in', 'thickness'], ['thickness_min_in', 'thicknessMin']]);
    }
    for (const row of published('nuts-hex-inch')) {
      inInches(row, only('screws', `${row.text('size')} hexagon nut`), [['flats_max_in', 'acrossFlats'], ['flats_min_in', 'acrossFlatsMin'], ['corners_max_in', 'acrossCornersMax'], ['thickness_max_in', 'thickness'], ['thickness_min_in', 'thicknessMin'], ['jam_max_in', 'thinThickness']]);
    }
  });
  it('nuts of ISO 4032 and 4035', () => {
    for (const row of published('nuts-hex-metric')) {
      const found = only('screws', `${row.text('size')} hexagon nut`);
      expect(['acrossFlats', 'acrossFlatsMin', 'acrossCornersMin', 'thickness', 'thicknessMin', 'thinThickness'].map((name) => found[name])).toEqual(
        ['flats_max_mm', 'flats_min_mm', 'corners_min_mm', 'height_max_4032_mm', 'height_min_4032_mm', 'height_max_4035_mm'].map(row.number),
      );
    }
  });
  it('corners of every nut stand to its flats as 1 to cos 30', () => {
    for (const found of rows('screws').filter((row) => String(row['kind']).includes('nut'))) {
      const corners = Number(found['acrossCornersMax'] ?? found['acrossCornersMin']);
      const flats = Number(found['acrossCornersMax'] === undefined ? found['acrossFlatsMin'] : found['acrossFlats']);
      expect(corners / flats, found.name).toBeGreaterThan(1.125);
      expect(corners / flats, found.name).toBeLessThan(1.16);
    }
  });
});

describe('centre drills', () => {
  it('pilots and bodies', () => {
    for (const row of published('centre-drills')) {
      const size = row.text('size');
      const iso = row.text('standard').startsWith('ISO');
      const found = only('centre-drills', iso ? `A ${size}` : row.text('standard').startsWith('ASME') ? `No. ${size}` : size);
      expect(Math.abs(Number(found['pilot']) / inch - row.number('pilot_dia_in')), size).toBeLessThan(0.0006);
    }
  });
});

describe('railways', () => {
  it('gauges, scales and ratios as printed', () => {
    for (const row of published('railway-gauges')) {
      const found = only('gauges', row.text('gauge_name'));
      expect(Math.abs(Number(found['gauge']) - row.number('gauge_mm_published')), found.name).toBeLessThan(0.51);
      expect(found['ratio']).toBe(row.number('ratio_published'));
      expect(Number(found['ratioOfStandardGauge'])).toBeCloseTo(row.number('ratio_from_4ft8.5'), 1.9);
      expect(String(found['scaleToTheFoot'])).toBe(`${row.text('scale_in_per_ft')} in`);
    }
  });
  it('wheels as printed, back to back and flange making the wheel check (one row is inconsistent in print)', () => {
    for (const row of published('wheel-standards')) {
      const found = only('gauges', `${row.number('track_gauge_in')} in wheels`);
      for (const [column, ours] of [['tire_width_min_in', 'tyreWidthMin'], ['flange_width_max_in', 'flangeWidthMax'], ['flange_depth_max_in', 'flangeDepthMax'], ['back_to_back_in', 'backToBack'], ['wheel_gauge_in', 'wheelGauge'], ['wheel_check_ref_in', 'wheelCheck']] as const) {
        expect(Number(found[ours]) / inch).toBeCloseTo(row.number(column), 5);
      }
      const off = Math.abs(Number(found['wheelCheck']) - Number(found['backToBack']) - Number(found['flangeWidthMax'])) / inch;
      expect(off < 0.0061).toBe(found['note'] === undefined);
    }
  });
});

describe('heat', () => {
  it('tempering colours within what the authority gives', () => {
    for (const row of published('tempering-colours')) {
      const colour = row.text('colour');
      const found = rows('tempering').filter((candidate) => candidate['kind'] === 'tempering' && candidate.name.replace(/ \(.*\)/, '') === colour && Math.abs((Number(candidate['lowCelsius']) + Number(candidate['highCelsius'])) / 2 - row.number('temp_C')) < 3);
      expect(found.length, `${colour} ${row.text('temp_C')}`).toBeGreaterThan(0);
    }
  });
  it('hardening temperatures and heat colours', () => {
    const ranges = rows('tempering').map((row) => `${Number(row['lowCelsius'])}-${Number(row['highCelsius'])}`);
    for (const row of [...published('hardening'), ...published('heat-colours')]) expect(ranges).toContain(`${row.number('low_C')}-${row.number('high_C')}`);
  });
});

describe('looking up', () => {
  it('answers one thread or drill with an object', () => {
    const thread = findTable('threads').find('0-80');
    expect(thread).toMatchObject({ kind: 'row', row: { major: 1.524, pitch: 0.3175, tpi: 80, pitchDiameter: 1.31826, minorInternal: { min: 1.1811, max: 1.30556, class: '2B' } } });
    expect(findTable('drills').find('#53')).toMatchObject({ kind: 'row', row: { name: '#53', diameter: 1.5113 } });
    expect(findTable('materials').find('EN1A')).toMatchObject({ kind: 'row', row: { name: 'free-cutting mild steel' } });
  });
  it('answers a series, form or kind with rows', () => {
    expect(rows('threads', 'ba')).toHaveLength(17);
    expect(rows('drills', 'letters')).toHaveLength(26);
    expect(rows('stock', 'hexagon bar').every((row) => row['form'] === 'hexagon bar')).toBe(true);
    expect(rows('stock', 'silver steel').length).toBeGreaterThan(30);
    expect(rows('screws', 'M3').map((row) => row['kind'])).toEqual(['countersunk', 'socket countersunk', 'cheese head', 'hexagon head', 'socket cap', 'hexagon nut']);
    expect(rows('fits', 'H7').map((row) => row['upperMicrometres'])).toEqual([10, 12, 15, 18, 21, 25, 30, 35, 40, 46]);
    expect(rows('fits', 'r6').find((row) => row['upTo'] === 65)).toMatchObject({ over: 50, upperMicrometres: 60, lowerMicrometres: 41 });
    expect(rows('fits', 'IT7')).toHaveLength(10);
    expect(rows('fits', 'RC4')[1]).toMatchObject({ over: 3.048, upTo: 6.096, holeUpper: 0.01778, shaftUpper: -0.01016, shaftLower: -0.02286 });
    expect(rows('materials', 'aluminium')).toHaveLength(1);
    expect(rows('materials', 'copper alloy').length).toBeGreaterThan(4);
  });
  it('gives every row a name and a source', () => {
    for (const { rows: all, name } of tables) {
      expect(all.length, name).toBeGreaterThan(10);
      for (const row of all) expect([typeof row.name, row.name.length > 0, row.source.length > 8], `${name} ${row.name}`).toEqual(['string', true, true]);
    }
  });
  it.each([
    ['treads', undefined, 'there is no table "treads": choose threads, drills, reamers, centre-drills, fits, materials, stock, gauges, screws, tempering; the nearest is threads.'],
    ['stock', 'unobtainable', 'table stock has no row "unobtainable".'],
    ['screws', 'M33', 'table screws has no row "M33"'],
    ['materials', 'brss', '; the nearest is brass.'],
    ['fits', 'RC0', 'fit "RC0" is not in the table: allowed are RC1, RC2'],
  ])('%s %s is refused', (table, filter, sentence) => {
    expect(() => findTable(table).find(filter)).toThrow(sentence);
  });
});
