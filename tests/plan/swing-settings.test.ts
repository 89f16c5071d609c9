import { describe, expect, it } from 'vitest';
import { resolveValues } from '../../engine/part/resolve.js';
import { planOf } from '../../engine/plan/plan.js';
import { readShop } from '../../engine/trade/shop/read-shop.js';
import rod from '../../generators/parts/connecting-rod.js';
import { inch, inPlan, planned, smallInchShop } from './planned.js';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

describe('a curved slot swung about its pivot', () => {
  it.each([
    ['right', 1],
    ['left', -1],
  ] as const)('%s hand: the spindle stands the radius from the pivot, and the work swings by the arc sine of the ends', async (hand, sense) => {
    const { settings, blocks } = await planned('expansion-link', 30, { hand });
    const end = degrees(Math.asin(0.625 / 4));
    expect(settings).toHaveLength(1);
    expect(settings[0]!.radius).toBeCloseTo(4 * inch, 9);
    expect(settings[0]!.angles![0]).toBeCloseTo(-end, 9);
    expect(settings[0]!.angles![1]).toBeCloseTo(end, 9);
    const sides = (await planned('expansion-link', 40, { hand })).settings;
    // Half the cutter beyond each side: 4 in and 5/16, and 3/16 more.
    expect(sides.map(({ radius }) => radius! / inch)).toEqual([expect.closeTo(4.5, 9), expect.closeTo(3.5, 9)]);
    // The tail lies nearer on the right hand as it is held: to bring it under the spindle the work turns the other way.
    const ends = [degrees(Math.asin(1.5625 / 4)), -degrees(Math.asin(1.125 / 4))].map((angle) => -sense * angle).sort((a, b) => a - b);
    for (const side of sides) side.angles!.forEach((angle, i) => expect(angle).toBeCloseTo(ends[i]!, 9));
    expect(JSON.stringify(blocks)).toContain('"Pivot at X +4.0000, Y 0. At 0° the trunnion line lies under the spindle;');
    // The stops of the whole swing stand as far apart at the spindle as the middles of the ends.
    expect(JSON.stringify(blocks)).toContain('["curved slot, middle line","4.0000","−8.99°","+8.99°","1.2500"]');
  });

  it('with a cutter narrower than the slot: a course for each wall, and the ends plunged first', async () => {
    const shop = readShop('units: in\ncutters: [{diameter: 3/16}]\n');
    const { settings, blocks } = await planned('expansion-link', 30, { shop });
    expect(settings.map(({ radius }) => radius! / inch)).toEqual([expect.closeTo(4, 9), expect.closeTo(4.03125, 9), expect.closeTo(3.96875, 9)]);
    expect(JSON.stringify(blocks)).toContain('Ends: first plunge a cutter as wide as the slot at both angles of its middle line.');
  });
});

describe('where the cutter stops', () => {
  it('in the corner to a boss: it touches boss and edge', async () => {
    const { settings } = await planned('connecting-rod', 30);
    const stops = settings.filter(({ what }) => what.endsWith('corner'));
    expect(stops).toHaveLength(4);
    for (const { x, y } of stops) {
      const along = Math.min(x!, 6.5 * inch - x!);
      const boss = x! < 3 * inch ? 9 / 16 : 3 / 8;
      // As far from the bore as boss and cutter together, and the cutter's radius beyond the edge.
      expect(Math.hypot(along, y!) / inch).toBeCloseTo(boss + 0.25, 9);
      expect(Math.abs(y!) / inch).toBeCloseTo(0.25 + 0.25, 9);
    }
  });

  it('at the ends of a flute, on its middle line', async () => {
    const { settings } = await planned('connecting-rod', 40);
    expect(settings.filter(({ what }) => what === 'flute, end').map(({ x, y }) => [x! / inch, y])).toEqual([[expect.closeTo(1.125, 9), 0], [expect.closeTo(5.625, 9), 0]]);
  });

  it('a narrower cutter goes farther, to the same round end', () => {
    const part = rod.build(resolveValues(rod, { fluteWidth: '5/16 in', shankHeight: '5/8 in' }, undefined));
    const { settings } = inPlan(planOf(part, 'in', smallInchShop), 40);
    // A quarter-inch cutter in a flute of 5/16: a thirty-second more each way.
    expect(settings.filter(({ what }) => what === 'flute, end').map(({ x }) => x! / inch)).toEqual([expect.closeTo(1.125 - 1 / 32, 9), expect.closeTo(5.625 + 1 / 32, 9)]);
  });
});
