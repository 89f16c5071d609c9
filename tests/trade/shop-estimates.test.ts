import { describe, expect, it } from 'vitest';
import { checkShop, readShop } from '../../engine/trade/shop/read-shop.js';
import { describeShop } from '../../engine/trade/shop/describe.js';

describe('what a shop file estimates', () => {
  const shop = readShop('chances:\n  small tap: 0.02\n  parting: 0\ntimes:\n  crosshead: {90: 12, 100: 40.5}\nprices: {hour: 12, materials: {EN1A: 6}}\n');
  it('is read', () => {
    expect(shop.chances).toEqual({ 'small tap': 0.02, parting: 0 });
    expect(shop.times).toEqual({ crosshead: { 90: 12, 100: 40.5 } });
    expect(shop.prices).toEqual({ hour: 12, materials: { 'free-cutting mild steel': 6 } });
  });
  it('is described', () => {
    expect(describeShop(shop)).toEqual(expect.arrayContaining([['chance, small tap', '0.02'], ['minutes, crosshead', 'operation 90: 12; operation 100: 40.5'], ['prices', 'an hour 12; a kilogram of free-cutting mild steel 6']]));
  });
});

describe('faults of it', () => {
  it.each([
    ['chances:\n  small tap: 2', 'line 2, column 14: chances, small tap: 2 is no chance: give a number from 0 to 1, as in 0.05.'],
    ['chances:\n  small tap: -0.1', 'line 2, column 14: chances, small tap: -0.1 is no chance: give a number from 0 to 1, as in 0.05.'],
    ['chances:\n  small tap: often', 'line 2, column 14: chances, small tap is "often": it must be a number.'],
    ['chances:\n  smal tap: 0.1', 'line 2, column 3: chances has no "smal tap": allowed are small tap, small drill, cutter beside a wall, angled set-up, uncertain datum, blind depth, break-through, handed position, thin wall, parting, hardening, narrow slot, reamed fit, close size, conical seat, long overhang, thread to a shoulder, swung cut; the nearest is small tap.'],
    ['times:\n  crosshead: {ninety: 3}', 'line 2, column 14: times, crosshead: "ninety" is no number of an operation: give one from 1 to 9999.'],
    ['times:\n  crosshead: {90: 0}', 'line 2, column 14: times, crosshead: operation 90 takes "0": give its minutes, a number above nought.'],
    ['times:\n  crosshead: 5', 'line 2, column 14: times, crosshead is "5": it must be a group of keys.'],
    ['prices: {hour: 0, materials: {}}', 'line 1, column 16: prices, hour is "0": it must be more than 0.'],
    ['prices: {hour: 5, materials: {}, coal: 1}', 'line 1, column 34: prices has no "coal": allowed are hour, materials.'],
    ['prices: {hour: 5, materials: {brss: 1}}', 'line 1, column 30: prices, materials: material "brss" is not in the table'],
  ])('%j', (text, sentence) => {
    const { problems, shop } = checkShop(text);
    expect(shop).toBeUndefined();
    expect(problems.filter((problem) => problem.includes(sentence)), problems.join(' | ')).toHaveLength(1);
    expect(problems).toHaveLength(1);
  });
});
