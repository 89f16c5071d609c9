import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coordinate, dialWords, readDial } from '../../engine/plan/figures.js';

const metric = { perTurn: 2, division: 0.02, reads: 'direct' } as const;
const imperial = { perTurn: 2.54, division: 0.0254, reads: 'direct' } as const;

describe('turns and divisions', () => {
  it.each([
    [0, metric, '0 d'],
    [1.5, metric, '75 d'],
    [12.5, metric, '6 t + 25 d'],
    // One turn back from zero, then half a turn forward: 2 mm back and 1 mm forward.
    [-1, metric, '\u22121 t + 50 d'],
    [-36.5125, metric, '\u221219 t + 74.4 d'],
    [0.3125 * 25.4, imperial, '3 t + 12.5 d'],
    [-0.0005 * 25.4, imperial, '\u22121 t + 99.5 d'],
    // What rounds up to a whole turn is a turn.
    [1.9999, metric, '1 t + 0 d'],
    [3.175, { ...imperial, reads: 'diameter' }, '2 t + 50 d'],
  ] as const)('%d mm on %j: %s', (mm, dial, words) => expect(dialWords(mm, dial)).toBe(words));

  it('give the position back to half a tenth of a division, with divisions within one turn', () => {
    fc.assert(
      fc.property(fc.double({ min: -400, max: 400, noNaN: true }), fc.constantFrom(metric, imperial, { perTurn: 1.5875, division: 0.0254, reads: 'direct' } as const, { ...metric, reads: 'diameter' } as const), (mm, dial) => {
        const { turns, divisions } = readDial(mm, dial);
        const counts = dial.reads === 'diameter' ? 2 : 1;
        const back = (turns * dial.perTurn + divisions * dial.division) / counts;
        expect(Math.abs(back - mm)).toBeLessThanOrEqual(0.051 * dial.division);
        expect(divisions).toBeGreaterThanOrEqual(0);
        expect(divisions * dial.division).toBeLessThan(dial.perTurn);
        expect(Number.isInteger(turns)).toBe(true);
      }),
      { seed: 41 },
    );
  });
});

describe('coordinates', () => {
  it.each([
    [0.6875 * 25.4, 'in', '+.6875'],
    [-0.1875 * 25.4, 'in', '\u2212.1875'],
    [17.4625, 'mm', '+17.463'],
    [-0, 'mm', '0'],
    [0.00001, 'in', '0'],
  ] as const)('%d mm in %s is %s', (mm, unit, text) => expect(coordinate(mm, unit)).toBe(text));
});
