import { describe, expect, it } from 'vitest';
import { centreDrillFor, centreDrills } from '../../engine/trade/centre-drills.js';
import { published } from '../published/read-csv.js';

describe('centre drills', () => {
  it('are those of ASME B94.11M and ISO 866', () => {
    for (const row of published('centre-drills')) {
      const iso = row.text('standard').startsWith('ISO');
      if (!iso && !row.text('standard').startsWith('ASME')) continue;
      const name = `centre drill ${iso ? 'A' : 'No.'} ${row.text('size')}`;
      const drill = centreDrills[iso ? 'iso' : 'american'].find(({ designation }) => designation === name);
      expect(Math.abs(drill!.pilot / 25.4 - row.number('pilot_dia_in')), name).toBeLessThan(0.0006);
    }
  });

  // The largest whose pilot is half the mouth at most: 3/32 in takes No. 1 (.047), 3/16 in No. 2 (.078), 3/8 in No. 5 (.188).
  it.each([
    [0.6, 'No. 00'],
    [1.19, 'No. 00'],
    [2.38125, 'No. 1'],
    [4.7625, 'No. 2'],
    [9.525, 'No. 5'],
    [17, 'No. 8'],
  ])('a mouth of %d mm takes %s', (mouth, name) => expect(centreDrillFor(mouth, 'american').designation).toBe(`centre drill ${name}`));

  it.each([[1.2, 'A 0.5 mm'], [2.4, 'A 1 mm'], [5, 'A 2.5 mm'], [12, 'A 5 mm']])('and of %d mm in ISO sizes %s', (mouth, name) => expect(centreDrillFor(mouth, 'iso').designation).toBe(`centre drill ${name}`));

  it('has a body as wide as the mouth, and of those the cone is as deep as can be', () => {
    for (const system of ['american', 'iso'] as const)
      for (let mouth = 1; mouth < 19; mouth += 0.1) {
        const { body, pilot } = centreDrillFor(mouth, system);
        expect(body).toBeGreaterThanOrEqual(mouth - 1e-6);
        expect(pilot).toBeLessThan(0.65 * mouth);
        for (const other of centreDrills[system]) if (other.pilot > pilot && other.body >= mouth) expect(other.pilot).toBeGreaterThan(0.51 * mouth);
      }
  });
});
