import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alikeOf } from '../../../engine/plan/stakes/alike.js';
import { anyOf, riskOf } from '../../../engine/plan/stakes/chance.js';
import { rankedStakes, worthRehearsing } from '../../../engine/plan/stakes/rank.js';
import { stakeSentences } from '../../../engine/plan/stakes/sentences.js';
import type { Stake } from '../../../engine/plan/stakes/stake.js';
import { chanceRows, riskKinds } from '../../../engine/trade/data/chances.js';
import { readShop } from '../../../engine/trade/shop/read-shop.js';
import { defaultShop } from '../../../engine/trade/shop/shop.js';
import { builtIn, inputOf, numberOf, riskAt, stakeAt, stakesIn } from './staked.js';
import { stakesOf } from '../../../engine/plan/stakes/stakes-of.js';

const crosshead = await builtIn('crosshead');
const makers = [{ cut: 'outer-cheek', volume: 58 }, { cut: 'lug-hole', volume: 18 }, { cut: 'pin-seat', volume: 15 }, { cut: 'oil-hole', volume: 9 }];
const stakes = stakesIn(crosshead, { makers });
const op = (cut: string): number => numberOf(crosshead, cut);
const ops = (...cuts: readonly string[]): readonly number[] => cuts.map(op).sort((a, b) => a - b);
const [upper, lower] = ops('pad-threads-upper', 'pad-threads-lower') as [number, number];
const [bevel] = ops('bevel-outer', 'bevel-inner') as [number];
const words = (stake: Stake): readonly string[] => stakeSentences(stake).map((phrase) => phrase.map((piece) => (typeof piece === 'string' ? piece : piece.length.toFixed(3))).join(''));

describe('the stakes of the crosshead', () => {
  it('put the pad threads and the bevels first, as a machinist would', () => {
    const ranked = rankedStakes(stakes).map(({ operation }) => operation);
    expect(ranked.slice(0, 4).sort((a, b) => a - b)).toEqual(ops('pad-threads-upper', 'pad-threads-lower', 'bevel-outer', 'bevel-inner'));
    expect(ranked.slice(4, 9)).toEqual(expect.arrayContaining([...ops('outer-cheek', 'cross-bore', 'pin-seat')]));
    expect(ranked.slice(-5).sort((a, b) => a - b)).toEqual(ops('front', 'boss', 'rod-hole', 'rod-thread', 'rear'));
  });
  it('are worth a rehearsal for the pad threads and the bevels, each once', () => {
    expect(worthRehearsing(stakes)).toEqual(rankedStakes(stakes).map(({ operation }) => operation).filter((operation) => operation === upper || operation === bevel));
    expect(stakeAt(stakes, upper)).toMatchObject({ alike: [lower], worthRehearsing: true });
    expect(stakeAt(stakes, lower)).toMatchObject({ rehearsedWith: upper, worthRehearsing: false });
  });
  it('are chance x (hours before + here + material), and the hours add up', () => {
    stakes.forEach((stake, i) => {
      const next = stakes[i + 1];
      expect(stake.atStake).toBeCloseTo(stake.chance * (stake.hoursSoFar + stake.hoursHere + stake.materialHours), 12);
      expect(stake.chance).toBeCloseTo(anyOf(stake.risks.map(({ chance }) => chance)), 12);
      if (next !== undefined) expect(next.hoursSoFar).toBeCloseTo(stake.hoursSoFar + stake.hoursHere, 12);
    });
  });
  it('say of what has no risk that nothing in it is tricky, and of what cuts nothing where to try it', async () => {
    expect(stakeAt(stakes, op('front'))).toMatchObject({ chance: 0, atStake: 0, notRehearsed: 'nothing in it is tricky', worthRehearsing: false });
    const pin = await builtIn('crosshead-pin');
    expect(stakeAt(stakesIn(pin), numberOf(pin, 'Harden and temper'))).toMatchObject({ notRehearsed: 'it cuts nothing: try it on an offcut of the same bar', worthRehearsing: false });
  });
  it('take the cost of a rehearsal that is given', () => {
    const costly = stakesOf(inputOf(crosshead, { costOf: (operation) => (operation === upper ? 99 : undefined) }));
    expect(stakeAt(costly, upper)).toMatchObject({ rehearsalCost: 99, worthRehearsing: false });
    expect(stakeAt(costly, bevel).worthRehearsing).toBe(true);
  });
  it('are told in sentences with both sides', () => {
    const [sum, ...risks] = words(stakeAt(stakes, upper));
    expect(sum).toMatch(/^23 % x \(\d\.\d h before \+ 0\.\d h here \+ 0\.1 h of material\) = 1\.\d h at stake, \d\.\d h with operation \d+ alike; a rehearsal costs \d\.\d h: worth a rehearsal$/);
    expect(risks).toEqual([expect.stringMatching(/^small tap, 23 % \(common practice\): tap 0-80 UNF in 8 holes: takes 0\.038 N m and twists off at 0\.056, a margin of 1\.5$/)]);
    expect(words(stakeAt(stakes, lower))[0]).toContain(`: the same cut as at operation ${upper}, whose rehearsal serves it`);
    expect(words(stakeAt(stakes, op('front')))).toEqual([expect.stringMatching(/^nothing in it is tricky; 0\.\d h before, 0\.\d h here$/)]);
  });
  it('are the same each time', () => expect(JSON.stringify(stakesIn(crosshead, { makers }))).toBe(JSON.stringify(stakes)));
});

describe('the shop file', () => {
  it('sets chances of its own, and they are named as its', () => {
    const own = stakesIn(crosshead, { shop: readShop('chances: {small tap: 0.02, angled set-up: 0}') });
    expect(riskAt(own, upper, 'small tap')).toMatchObject({ source: 'shop file', figures: { ofTable: 0.02 } });
    expect(riskAt(own, upper, 'small tap')!.chance).toBeGreaterThan(riskAt(stakes, upper, 'small tap')!.chance);
    expect(riskAt(own, bevel, 'angled set-up')?.chance).toBe(0);
    expect(riskAt(own, op('cross-bore'), 'reamed fit')?.source).toBe('common practice');
  });
  it('with longer times raises what is at stake afterwards, not before', () => {
    const groove = op('groove-upper');
    const slow = stakesIn(crosshead, { shop: readShop(`times: {crosshead: {${groove}: 600}}`), makers });
    for (const [i, stake] of slow.entries()) {
      if (stake.operation < groove) expect(stake.atStake).toBe(stakes[i]!.atStake);
      if (stake.operation > groove && stake.chance > 0) expect(stake.atStake).toBeGreaterThan(stakes[i]!.atStake);
    }
  });
});

const seed = 20240611;
const chances = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 8 });
const anyStake = fc.record({ operation: fc.integer({ min: 1, max: 9999 }), atStake: fc.double({ min: 0, max: 100, noNaN: true }), worth: fc.boolean() }).map(({ operation, atStake, worth }): Stake => ({
  operation, atStake, worthRehearsing: worth, risks: [], chance: 0, hoursSoFar: 0, hoursHere: 0, materialHours: 0, materialKilograms: 0, rehearsalCost: 0, alike: [], atStakeWithAlike: atStake,
}));

describe('chances', () => {
  it('together stay between nought and one, and are no less than the greatest', () => {
    fc.assert(fc.property(chances, (list) => {
      const any = anyOf(list);
      return any >= 0 && any <= 1 && any >= Math.max(0, ...list) - 1e-12;
    }), { seed });
  });
  it('grow with their figures and with the number of holes', () => {
    const figure = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(fc.property(fc.constantFrom(...riskKinds), figure, figure, fc.integer({ min: 1, max: 30 }), (kind, a, b, holes) => {
      const chance = (factor: number, count: number): number => riskOf({ shop: defaultShop }, { kind, factor, holes: count, because: [], figures: {} }).chance;
      const [low, high] = [Math.min(a, b), Math.max(a, b)];
      return chance(low, holes) <= chance(high, holes) + 1e-12 && chance(low, holes) <= chance(low, holes + 1) + 1e-12 && chance(high, holes) <= 0.9 && chance(low, holes) >= 0;
    }), { seed });
  });
  it('of the table are chances, each with its rule', () => {
    for (const kind of riskKinds) expect(chanceRows[kind]).toMatchObject({ chance: expect.any(Number) as number, source: 'common practice' });
    expect(Object.values(chanceRows).every(({ chance, rule }) => chance > 0 && chance < 0.2 && rule.length > 10)).toBe(true);
  });
});

describe('the ranking', () => {
  it('falls, with ties in the order of the operations, and keeps them all', () => {
    fc.assert(fc.property(fc.array(anyStake, { maxLength: 20 }), (list) => {
      const ranked = rankedStakes(list);
      return ranked.length === list.length && ranked.every((stake, i) => i === 0 || ranked[i - 1]!.atStake > stake.atStake || (ranked[i - 1]!.atStake === stake.atStake && ranked[i - 1]!.operation <= stake.operation));
    }), { seed });
  });
  it('picks only what is worth it', () => {
    fc.assert(fc.property(fc.array(anyStake, { maxLength: 20 }), (list) => worthRehearsing(list).length === list.filter(({ worthRehearsing: worth }) => worth).length), { seed });
  });
});

describe('operations alike', () => {
  const with_ = (operation: number, figures: Readonly<Record<string, number | string>>) => ({ operation, risks: [{ kind: 'small tap', chance: 0.1, because: [], figures, source: '' }] });
  it('have the same figures, wherever on the part they are', () => {
    const alike = alikeOf([with_(10, { margin: 1.5, place: 'a' }), with_(20, { margin: 2, place: 'a' }), with_(30, { margin: 1.5, place: 'b' }), { operation: 40, risks: [] }, { operation: 50, risks: [] }]);
    expect([...alike]).toEqual([[10, [30]], [20, []], [30, []], [40, []], [50, []]]);
  });
});
