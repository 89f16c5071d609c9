import { describe, expect, it } from 'vitest';
import { blankMaterial, blankMinutes } from '../../../engine/plan/stakes/times/blank.js';
import { setUpMinutes } from '../../../engine/plan/stakes/times/holding.js';
import { operationTime } from '../../../engine/plan/stakes/times/operation-time.js';
import { cutMinutes, drillPoint } from '../../../engine/trade/cut-minutes.js';
import { turnsPerMinute } from '../../../engine/trade/cutting.js';
import { findMaterial } from '../../../engine/trade/materials.js';
import { readShop } from '../../../engine/trade/shop/read-shop.js';
import { defaultShop } from '../../../engine/trade/shop/shop.js';
import { published } from '../../published/read-csv.js';
import { builtIn, factsAt, inputOf, numberOf } from './staked.js';

describe('the time of a cut', () => {
  it.each(published('machining-times').map((row) => [row.text('cut'), row] as const))('of %s is that of the handbook', (_, row) => {
    const diameter = row.number('diameter_mm');
    const turns = row.text('turns') === '' ? turnsPerMinute(row.number('speed_m_min'), diameter) : row.number('turns');
    const point = row.text('point_angle') === '' ? 0 : drillPoint(diameter, row.number('point_angle'));
    const minutes = cutMinutes({ length: row.number('length_mm') + point, overrun: row.number('overrun_mm'), feed: row.number('feed_mm'), turns });
    expect(minutes).toBeCloseTo(row.number('minutes'), 2);
  });
  it('leaves a flat-bottomed hole without a point', () => expect(drillPoint(10, 180)).toBe(0));
});

const inch = 25.4;
const crosshead = await builtIn('crosshead');
const pin = await builtIn('crosshead-pin');
const op = (cut: string): number => numberOf(crosshead, cut);

describe('the time of an operation', () => {
  it('is cutting by the feeds and speeds of the plan: the boss of the crosshead, turned', () => {
    const facts = factsAt(inputOf(crosshead), op('boss'));
    const turns = facts.cutters[0]!.speed!;
    // The far corner of the bar swings 0.8248 in; to the boss of 9/32 in radius, 0.15 mm left to finish, 0.75 mm a pass.
    const off = Math.hypot(0.65625, 0.5) * inch - (9 / 32) * inch;
    const passes = Math.ceil((off - 0.15) / 0.75);
    const [rough, finish] = [0.007 * inch, 0.003 * inch];
    const long = 0.5 * inch + 2;
    const wanted = (long * passes) / (rough * turns) + long / (finish * turns) + 0.3 * (passes + 1);
    expect(operationTime(facts).cutting).toBeCloseTo(wanted, 6);
  });
  it('is drilling with the point, at the middle of the feeds, and clearing the chips', () => {
    const facts = factsAt(inputOf(crosshead), op('rod-hole'));
    const drill = facts.cutters.find(({ kind }) => kind === 'drilling')!;
    const depth = 0.54 * inch;
    const point = drill.diameter! / 2 / Math.tan((59 * Math.PI) / 180);
    const down = (depth + point + 1) / (0.003 * inch * drill.speed!);
    expect(operationTime(facts).cutting).toBeCloseTo(0.5 + down + 0.1 * Math.ceil(depth / drill.diameter!), 6);
  });
  it('is tapping by hand, hole by hole, slower where the tap is thin', () => {
    const facts = factsAt(inputOf(crosshead), op('pad-threads-upper'));
    const turns = (0.11 * inch) / (inch / 80) + 3;
    expect(operationTime(facts).cutting).toBeCloseTo(8 * (1.5 + 2 * 0.12 * turns), 6);
    expect(operationTime(facts, 2).cutting).toBeCloseTo(2 * (1.5 + 2 * 0.12 * turns), 6);
  });
  it('is what the part says, and before that what the shop file says', () => {
    const part = crosshead;
    const told = { ...part, operations: part.operations.map((operation) => (operation.number === op('pad-threads-upper') ? { ...operation, minutes: 90 } : operation)) };
    expect(operationTime(factsAt(inputOf(told), op('pad-threads-upper')))).toMatchObject({ minutes: 90, source: 'part' });
    const shop = readShop(`times: {crosshead: {${op('pad-threads-upper')}: 55}}`);
    expect(operationTime(factsAt(inputOf(told, { shop }), op('pad-threads-upper')))).toMatchObject({ minutes: 55, source: 'shop file' });
    expect(operationTime(factsAt(inputOf(told, { shop }), op('pad-holes-upper'))).source).toBe('estimate');
  });
  it('of a bench operation is that of its kind', () => {
    expect(operationTime(factsAt(inputOf(pin), numberOf(pin, 'Harden and temper'))).minutes).toBe(5 + 4 + 75);
  });
});

describe('the time of a set-up', () => {
  it.each([
    [crosshead, 'boss', 'a four-jaw chuck, set true, and the end touched', 25 + 2],
    [crosshead, 'groove-upper', 'a vice on parallels, two edges found and the top touched', 10 + 4 + 4 + 2],
    [pin, 'Harden and temper', 'the bench', 5],
  ] as const)('of $0.name, $1: $2', (part, cut, _, minutes) => {
    expect(setUpMinutes(factsAt(inputOf(part), numberOf(part, cut)))).toBe(minutes);
  });
  it('on angle packing takes three times that of a vice on parallels', () => {
    const input = inputOf(crosshead);
    expect(setUpMinutes(factsAt(input, op('bevel-outer')))).toBeGreaterThan(setUpMinutes(factsAt(input, op('groove-upper'))) + 15);
  });
});

describe('the blank', () => {
  it('is sawn by its section and weighed by its density', () => {
    const part = crosshead;
    const steel = findMaterial('EN1A');
    // 1 1/4 x 1 in bar, 1 3/4 in long, 7850 kg/m3: 0.2814 kg.
    const kilograms = 1.25 * 1 * 1.75 * inch ** 3 * 7850e-9;
    const { kilograms: found, hours, source } = blankMaterial(part, steel, defaultShop);
    expect(found).toBeCloseTo(kilograms, 9);
    expect([hours / found, source]).toEqual([expect.closeTo(0.5, 9), 'common practice']);
    expect(blankMinutes(part)).toBeCloseTo(15 + (1.25 * inch ** 2) / 80, 9);
  });
  it('stands for what the prices of the shop file make it', () => {
    const part = crosshead;
    const shop = readShop('prices: {hour: 12, materials: {EN1A: 6, brass: 9}}');
    expect(blankMaterial(part, findMaterial('EN1A'), shop)).toMatchObject({ hours: expect.closeTo((1.25 * 1.75 * inch ** 3 * 7850e-9 * 6) / 12, 9) as number, source: 'shop file' });
  });
});
