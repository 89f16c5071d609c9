import { describe, expect, it } from 'vitest';
import { block, sized } from './block.js';
import { findingsIn, of, sentence, short } from './found.js';

describe('where a drill starts', () => {
  it('is sound on a level face, right through or blind', () => {
    const part = block((cut, { top, middle }) => [{ cutter: 'drill', cuts: [cut.hole({ id: 'hole', name: 'hole', entry: top, direction: '-z', at: [middle], diameter: sized(5) })] }]);
    expect(findingsIn(part)).toEqual([]);
  });

  it.each([
    [10, 'remark'],
    [30, 'warning'],
    [50, 'fatal'],
  ] as const)('is told on a slope of %d degrees, as a %s', (angle, gravity) => {
    // A slope as its plane: through the middle of the top, leaning toward the right.
    const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
    const sloped = block((cut, { top, middle }) => [
      { cutter: 'end mill', cuts: [{ id: 'slope', name: 'slope', forms: [{ kind: 'half-space', point: [20, 15, 15], normal: [s, 0, c], face: 'face' }], faces: { face: { stations: [] } }, sizes: [], stations: [], instruction: [] }] },
      { cutter: 'drill', cuts: [cut.hole({ id: 'hole', name: 'hole', entry: top, direction: '-z', at: [middle], diameter: sized(5) })] },
    ]);
    const [found] = of(findingsIn(sloped), 'drill start');
    expect(found?.gravity).toBe(gravity);
    expect(found?.figures['slope']).toBeCloseTo(angle, 3);
  });

  it('is told over an edge, by how much of the rim finds metal', () => {
    const over = (x: number) =>
      findingsIn(block((cut, { top, middle, at }) => [{ cutter: 'drill', cuts: [cut.hole({ id: 'hole', name: 'hole', entry: top, direction: '-z', at: [[at('x', x), middle[1]]], diameter: sized(6) })] }]));
    expect(short(of(over(1.5), 'drill start'))).toEqual(['10 warning drill start']);
    expect(short(of(over(-0.5), 'drill start'))).toEqual(['10 fatal drill start']);
    // 1.5 from the edge of a drill of radius 3: the rim is in metal but for 2 acos(1.5 / 3) of its round, a third.
    expect(of(over(1.5), 'drill start')[0]?.figures['rim']).toBeCloseTo(2 / 3, 1);
  });
});

describe('where a drill comes out', () => {
  const crossed = (diameter: number, y: number) =>
    findingsIn(
      block((cut, { left, top, middle, at }) => [
        { cutter: 'drill', cuts: [cut.hole({ id: 'cross', name: 'cross hole', entry: left, direction: '+x', at: [[at('y', y), at('z', 10)]], diameter: sized(diameter) })] },
        { cutter: 'drill', cuts: [cut.hole({ id: 'down', name: 'down hole', entry: top, direction: '-z', at: [middle], diameter: sized(4) })] },
      ]),
    );

  it('is told at a cross hole, by how much sooner one side of the drill is through', () => {
    const found = of(crossed(8, 15), 'break-through');
    expect(short(found)).toEqual(['20 remark break-through']);
    // 4 - sqrt(16 - 2^2) at the rim, 2 from the middle; lines run at 0.97 of the radius.
    expect(found[0]?.figures['unlike']).toBeCloseTo(4 - Math.sqrt(16 - 1.94 ** 2), 1);
    expect(sentence(found[0]!.sentence)).toContain('cross hole');
  });

  it('is a warning where the drill meets the cross hole by half', () => expect(short(of(crossed(8, 18.5), 'break-through'))).toEqual(['20 warning break-through']));

  it('is a warning on a slope', () => {
    const part = block((cut, { top, middle }) => [
      { cutter: 'end mill', cuts: [{ id: 'under', name: 'under side', forms: [{ kind: 'half-space', point: [20, 15, 6], normal: [Math.SQRT1_2, 0, -Math.SQRT1_2], face: 'face' }], faces: { face: { stations: [] } }, sizes: [], stations: [], instruction: [] }] },
      { cutter: 'drill', cuts: [cut.hole({ id: 'down', name: 'down hole', entry: top, direction: '-z', at: [middle], diameter: sized(4) })] },
    ]);
    const [found] = of(findingsIn(part), 'break-through');
    expect(found?.gravity).toBe('warning');
    expect(found?.figures['unlike']).toBeCloseTo(2 * 1.94, 1);
  });
});

describe('metal below and round a hole', () => {
  const hole = (depth: number, y = 15) => findingsIn(block((cut, { top, middle, at }) => [{ cutter: 'drill', cuts: [cut.hole({ id: 'hole', name: 'hole', entry: top, direction: '-z', at: [[middle[0], at('y', y)]], diameter: sized(4), depth: sized(depth) })] }]));
  const point = 2 / Math.tan((59 * Math.PI) / 180);

  it('is enough, little, or none below', () => {
    expect(hole(17)).toEqual([]);
    const [little] = of(hole(18.2), 'blind hole');
    expect(little?.gravity).toBe('warning');
    expect(little?.figures['wall']).toBeCloseTo(20 - 18.2 - point, 2);
    expect(short(of(hole(19), 'blind hole'))).toEqual(['10 fatal blind hole']);
  });

  it('is enough, little, or none beside', () => {
    expect(of(hole(10, 4), 'wall left')).toEqual([]);
    const [little] = of(hole(10, 2.6), 'wall left');
    expect(little?.gravity).toBe('warning');
    expect(little?.figures['wall']).toBeCloseTo(0.6, 2);
    expect(short(of(hole(10, 2.1), 'wall left'))).toEqual(['10 fatal wall left']);
  });
});

it('a hole deeper than the flutes of a jobber drill is told', () => {
  const part = block((cut, { left, middle, at }) => [{ cutter: 'drill', setUp: 'B', cuts: [cut.hole({ id: 'long', name: 'long hole', entry: left, direction: '+x', at: [[middle[1], at('z', 10)]], diameter: sized(3) })] }], {
    setUps: [{ id: 'B', machine: 'drill', holding: 'vice', grip: { kind: 'vice', between: ['y:near', 'y:far'] }, up: '-x', right: '+y', zero: ['x:left'] }],
  });
  const [found] = of(findingsIn(part), 'cutter reach');
  expect(found?.gravity).toBe('warning');
  // DIN 338: the flutes of 3 mm are 33 long.
  expect(found?.figures).toMatchObject({ depth: 40, flute: 33 });
});
