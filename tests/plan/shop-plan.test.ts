import { describe, expect, it } from 'vitest';
import { machineFrame } from '../../engine/plan/machine-frame.js';
import { inMachineWords } from '../../engine/plan/machine-words.js';
import { planOf } from '../../engine/plan/plan.js';
import { readShop } from '../../engine/trade/shop/read-shop.js';
import { partOfHand, smallInchShop } from './planned.js';

describe('what a shop lacks', () => {
  it('is told with the second best and its cost, each once', async () => {
    const { toGet, compared } = planOf(await partOfHand('crosshead', 'right'), 'in', smallInchShop);
    expect(compared).toBe(true);
    expect(toGet.map((lack) => `${lack.toGet}: ${lack.instead}`)).toEqual([
      '1.0000 x 1.2500 in flat bar, mild steel 11SMn30, bright, 1.7500 long: from the shelf 1.0000 x 1.5000 in must first come down to size',
      expect.stringMatching(/^drill 5\.8 mm: with #1 the thread is 69 % instead of 68 %$/),
      'end mill \u2300.1875 in: the figures are for \u2300.1250 in, which the shop has',
      expect.stringMatching(/^drill 1\.25 mm: with #55 the thread is 49 % instead of 66 %$/),
      expect.stringMatching(/^tap 0-80 UNF: 5-40 UNC has \d+ % more area in tension/),
      'reamer \u2300.2500 in: after the reamer \u2300.1875 in the rest is bored',
    ]);
  });

  it('is the bar too, where no bar of the shelf holds the part', async () => {
    const shop = readShop('units: in\nstock: [{form: flat bar, size: 1/2, width: 1}]\n');
    expect(planOf(await partOfHand('crosshead', 'right'), 'in', shop).toGet[0]?.toGet).toBe('1.0000 x 1.2500 in flat bar, mild steel 11SMn30, bright, 1.7500 long');
  });

  it('is nothing for a shop that lists no drawers: everything counts as at hand', async () => {
    const { toGet, compared, machines } = planOf(await partOfHand('crosshead', 'right'), 'in', undefined);
    expect([toGet, compared]).toEqual([[], false]);
    expect(machines).toMatch(/typical small lathe and mill/);
  });

  it('is a die that is not there', async () => {
    expect(planOf(await partOfHand('crosshead-pin', 'right'), 'in', smallInchShop).toGet.map(({ toGet }) => toGet)).toContain('die 10-32 UNF');
  });
});

describe('the axes in words', () => {
  it('are those of the machine: the part\u2019s z is X, its x is Y with the upper side up', async () => {
    const part = await partOfHand('crosshead', 'right');
    const frame = machineFrame(part, part.setUps.find(({ id }) => id === 'C')!);
    expect(inMachineWords('X .375 from rod axis; Z 1.0625 from front face; Y on it', frame)).toBe('Y .375 from rod axis; X 1.0625 from front face; Z on it');
    expect(inMachineWords('leans 30\u00b0 from +Z toward -X', frame)).toBe('leans 30\u00b0 from -X toward +Y');
    // Names and threads keep their letters.
    expect(inMachineWords('drill Z; 1/4x40, X-ray', { ...frame })).toContain('X-ray');
  });

  it('stay the part\u2019s where the part is tilted', async () => {
    const part = await partOfHand('crosshead', 'right');
    const frame = machineFrame(part, part.setUps.find(({ id }) => id === 'G')!);
    expect(inMachineWords('at 30\u00b0 to Z', frame)).toBe('at 30\u00b0 to the part\u2019s Z');
    expect(inMachineWords('across Y', frame)).toBe('across X');
  });
});

it('tells the dials of a shop as they are divided, and none where there is a read-out', async () => {
  const { runs } = planOf(await partOfHand('crosshead', 'right'), 'mm', smallInchShop);
  expect(runs[0]!.counting?.short).toBe('Dials: cross slide .100 in a turn, .001 in a division; carriage .700 in a turn, .010 in a division.');
  expect(runs[0]!.counting?.worth).toBe('.001 in');
  expect(runs[1]!.counting?.short).toBe('Figures as the read-out shows them.');
});
