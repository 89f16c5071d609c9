import { describe, expect, it } from 'vitest';
import { cutsIn, rectangularStock, sized, stationBook } from '../../engine/part/author/index.js';
import type { ArcSlotSize } from '../../engine/part/cut.js';

const at = stationBook();
const level = at.datum('y', 'line');
const middle = at.datum('z', 'middle');
const face = at.datum('x', 'face');
const far = at.from(face, 5, 'far face');
const ends = at.pair(level, 20, 'ends');
const [low, high] = at.pair(level, 4, 'walls');
const deep = at.from(face, 2, 'floor');
const bosses = [at.from(middle, 0, 'first boss'), at.from(middle, 60, 'second boss')] as const;
const cut = cutsIn(rectangularStock({ along: 'y', x: [face, far], y: [-20, 20], z: [-15, 15] }));

const slot = { id: 'slot', name: 'slot', middle: [level, middle], ends, tool: '-x', entry: far, width: sized(6) } as const;

describe('a slot along an arc', () => {
  it.each([
    ['-z', -50, 1],
    ['+z', 50, -1],
  ] as const)('with its centre toward %s has its ends on the circle through its middle', (toCentre, centre, sense) => {
    const { sizes, forms } = cut.arcSlot({ ...slot, toCentre, radius: sized(50) });
    const size = sizes[0] as ArcSlotSize;
    expect(size.centre).toEqual([5, 0, centre]);
    expect(size.middle.map((value) => value + 0)).toEqual([0, 0, sense]);
    expect([...size.ends].sort((a, b) => a[1] - b[1])).toEqual([-10, 10].map((y) => [5, expect.closeTo(y, 9), expect.closeTo(centre + sense * Math.sqrt(2400), 9)]));
    expect(forms).toHaveLength(1);
  });

  it('says what cannot be', () => {
    expect(() => cut.arcSlot({ ...slot, toCentre: '-z', radius: sized(9) })).toThrow(new RangeError('the slot ends beyond its circle'));
    expect(() => cut.arcSlot({ ...slot, toCentre: '-z', radius: sized(2) })).toThrow(new RangeError('the slot is 6 wide on a radius of 2'));
    expect(() => cut.arcSlot({ ...slot, toCentre: '-y', radius: sized(50) })).toThrow(new RangeError('the ends of the slot must lie along the axis that is square to cutter and centre'));
    expect(() => cut.arcSlot({ ...slot, ends: [ends[1], ends[0]], toCentre: '-z', radius: sized(50) })).toThrow(new RangeError('the slot runs from 10 to -10: the low end comes first'));
  });
});

describe('the sides of a band along an arc', () => {
  it('are refused where the stock reaches round their centre', () => {
    const sides = { id: 'sides', name: 'sides', middle: [level, middle], ends, tool: '-x', toCentre: '-z', half: 5, concentricWith: 'slot' } as const;
    expect(() => cut.arcSides({ ...sides, radius: sized(12) })).toThrow(new RangeError('the stock reaches round the centre of the sides'));
    expect(cut.arcSides({ ...sides, radius: sized(50) }).sizes[0]).toMatchObject({ kind: 'arc-sides', inner: 45, outer: 55 });
  });
});

describe('a straight slot with round ends', () => {
  const straight = { id: 'flute', name: 'flute', tool: '-x', entry: far, floor: deep, middle: level, walls: [low, high], ends: bosses } as const;

  it('carries its ends as full radii of half its width', () => {
    expect(cut.slot(straight).sizes[0]).toMatchObject({ kind: 'radius', full: true, radius: { value: 2 }, centres: [[5, 0, 0], [5, 0, 60]] });
  });

  it('says what cannot be', () => {
    expect(() => cut.slot({ ...straight, ends: [bosses[1], bosses[0]] })).toThrow(new RangeError('the flute runs from 60 to 0, -2 to 2 across: the low one comes first'));
    expect(() => cut.slot({ ...straight, middle: ends[1] })).toThrow(new RangeError('the walls of the flute are not midway about the ends'));
    expect(() => cut.slot({ ...straight, walls: [middle, bosses[1]] })).toThrow(new RangeError('the stations of the flute do not lie along three axes'));
  });
});

describe('the edge of a rod between two bosses', () => {
  const edge = { id: 'edge', name: 'edge', axis: 'x', edge: high, side: '+y', fillet: sized(3) } as const;
  const of = (first: number, second: number) => [{ centre: [level, bosses[0]], radius: first }, { centre: [level, bosses[1]], radius: second }] as const;

  it('has each fillet touch edge and boss', () => {
    const size = cut.betweenBosses({ ...edge, bosses: of(9, 6) }).sizes[0];
    if (size?.kind !== 'radius') throw new Error('no radius');
    const [a, b] = size.centres;
    expect([a![1], b![1]]).toEqual([5, 5]);
    expect(Math.hypot(a![1], a![2])).toBeCloseTo(9 + 3, 9);
    expect(Math.hypot(b![1], b![2] - 60)).toBeCloseTo(6 + 3, 9);
  });

  it('says what cannot be', () => {
    expect(() => cut.betweenBosses({ ...edge, bosses: of(9, 2) })).toThrow(new RangeError('the bosses do not rise above the edge'));
    expect(() => cut.betweenBosses({ ...edge, bosses: of(40, 30) })).toThrow(new RangeError('the edge has no room between its bosses'));
    expect(() => cut.betweenBosses({ ...edge, bosses: [of(9, 6)[1], of(9, 6)[0]] })).toThrow(new RangeError('the bosses of the edge do not stand in order on one line'));
  });
});
