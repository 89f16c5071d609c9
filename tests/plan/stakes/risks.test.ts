import { describe, expect, it } from 'vitest';
import { fit, sized, threadSize } from '../../../engine/part/author/index.js';
import type { Operation, Part } from '../../../engine/part/part.js';
import { findMaterial } from '../../../engine/trade/materials.js';
import { tapMargin } from '../../../engine/trade/sums/tap-torque.js';
import { findThread } from '../../../engine/trade/threads.js';
import { published } from '../../published/read-csv.js';
import { block, builtIn, numberOf, partWith, riskAt, stakesIn, type BlockGround } from './staked.js';

const inch = 25.4;
const crosshead = await builtIn('crosshead');
const pin = await builtIn('crosshead-pin');
const op = (cut: string): number => numberOf(crosshead, cut);
const ofPin = (cut: string): number => numberOf(pin, cut);
const stakes = stakesIn(crosshead);
const stakesOfPin = stakesIn(pin);

describe('the margin of a tap', () => {
  const torques = published('tapping-torque-examples').filter((row) => row.text('material').includes('Ck15'));
  const strengths = published('tap-torsion-model').filter((row) => row.number('effective_dia_ratio') === 0.6 && row.number('tau_MPa') === 900);
  const both = torques.flatMap((row) => strengths.filter((other) => other.text('tap') === row.text('tap')).map((other) => [row.text('tap'), row, other] as const));
  it('has published torques and strengths to be held against', () => expect(both.length).toBeGreaterThanOrEqual(4));
  // The published torques are worked with 3600 N/mm2 for this steel.
  it.each(both)('of %s is the published strength over the published torque', (name, torque, strength) => {
    const material = { ...findMaterial('EN1A'), tapCutting: 3600 };
    const found = tapMargin(findThread(name), torque.number('hole_mm'), material, 'taper');
    expect(found.torque).toBeCloseTo(torque.number('T_formula_A_Nm'), 2);
    expect(found.strength).toBeCloseTo(strength.number('torque_Nm'), 2);
    expect(found.margin).toBeCloseTo(strength.number('torque_Nm') / torque.number('T_formula_A_Nm'), 1);
  });
});

/** One operation in a block. */
const one = (cutter: string, cuts: (ground: BlockGround) => Operation['cuts'], more: Partial<Operation> = {}) => (ground: BlockGround) => [{ title: 'Cut', cutter: { name: cutter }, cuts: cuts(ground), ...more }];
const tapped = (designation: string, depth: number, drilled: number) => (ground: BlockGround): readonly Omit<Operation, 'number' | 'setUp'>[] => {
  const { at, cut, x, y, z } = ground;
  const thread = findThread(designation);
  const hole = { id: 'h', name: 'hole', entry: at.from(z, 20, 'top face'), direction: '-z' as const, at: [[at.from(x, 20, 'hole x'), at.from(y, 15, 'hole y')] as const], diameter: sized(thread.major - 0.8 * thread.pitch), depth: sized(drilled) };
  return [
    { title: 'Drill', cutter: { name: 'drill' }, cuts: [cut.hole(hole)] },
    { title: 'Tap', cutter: { name: 'taper tap' }, cuts: [cut.tap({ id: 't', name: 'thread', holes: hole, thread: threadSize(thread), depth: sized(depth) })] },
  ];
};

describe('a small tap', () => {
  it('is told with its torque and margin, all holes together', () => {
    const risk = riskAt(stakes, op('pad-threads-upper'), 'small tap')!;
    const { torqueNm, strengthNm, margin, holes, ofTable, factor } = risk.figures as Readonly<Record<string, number>>;
    expect(margin).toBeCloseTo(strengthNm! / torqueNm!, 9);
    expect([holes, ofTable]).toEqual([8, 0.01]);
    expect(factor).toBeCloseTo((2 / margin!) * Math.sqrt(0.3 / strengthNm!), 9);
    expect(risk.chance).toBeCloseTo(1 - (1 - 0.01 * factor!) ** 8, 9);
    expect(risk.source).toBe('common practice');
  });
  it('is none where the tap is stronger than a hand', () => {
    expect(riskAt(stakes, op('rod-thread'), 'small tap')).toBeUndefined();
  });
  it('is likelier with a thinner tap, and with no room for chips', () => {
    const chance = (designation: string, depth: number, drilled: number): number => riskAt(stakesIn(block(tapped(designation, depth, drilled))), 20, 'small tap')!.chance;
    expect(chance('M2', 5, 7)).toBeGreaterThan(chance('M3', 5, 7));
    expect(chance('M2', 5, 5.8)).toBeCloseTo(1.5 * chance('M2', 5, 7), 9);
  });
});

describe('what is left of the metal', () => {
  it('below a drilled hole, past its point', () => {
    const part = block(one('drill', ({ at, cut, x, y, z }) => [cut.hole({ id: 'h', name: 'hole', entry: at.from(z, 20, 'top face'), direction: '-z', at: [[at.from(x, 20, 'hx'), at.from(y, 15, 'hy')]], diameter: sized(6), depth: sized(17.5) })]));
    const risk = riskAt(stakesIn(part), 10, 'blind depth')!;
    expect(risk.figures['floor']).toBeCloseTo(20 - 17.5 - 3 / Math.tan((59 * Math.PI) / 180), 6);
    expect(risk.chance).toBeCloseTo(0.04 / Math.max(1 / 3, risk.figures['floor'] as number), 6);
  });
  it('below a pocket, and none where it is thick', () => {
    const floor = (height: number): Part => block(one('end mill', ({ at, cut, x, y, z }) => [cut.pocket({ id: 'p', name: 'pocket', tool: '-z', x: [at.from(x, 10, 'a'), at.from(x, 30, 'b')], y: [at.from(y, 10, 'c'), at.from(y, 20, 'd')], z: [at.from(z, height, 'floor'), 'open'], corner: 3 })]));
    expect(riskAt(stakesIn(floor(0.9)), 10, 'blind depth')?.figures['floor']).toBeCloseTo(0.9, 9);
    expect(riskAt(stakesIn(floor(1.6)), 10, 'blind depth')).toBeUndefined();
  });
  it('beside a slot, and beside a hole', () => {
    const slot = block(one('end mill', ({ at, cut, y, z }) => [cut.pocket({ id: 's', name: 'slot', tool: '-z', x: ['open', 'open'], y: [at.from(y, 1.2, 'a'), at.from(y, 12, 'b')], z: [at.from(z, 10, 'floor'), 'open'] })]));
    expect(riskAt(stakesIn(slot), 10, 'thin wall')?.figures).toMatchObject({ thickness: expect.closeTo(1.2, 9) as number, behind: 'face of the bar' });
    const hole = block(one('drill', ({ at, cut, x, y, z }) => [cut.hole({ id: 'h', name: 'hole', entry: at.from(z, 20, 'top face'), direction: '-z', at: [[at.from(x, 20, 'hx'), at.from(y, 4, 'hy')]], diameter: sized(6.5) })]));
    expect(riskAt(stakesIn(hole), 10, 'thin wall')?.figures['thickness']).toBeCloseTo(0.75, 9);
  });
  it('is not measured across air: the near wall of a slot says nothing of its far wall', () => {
    const slot = block(one('end mill', ({ at, cut, y, z }) => [cut.pocket({ id: 's', name: 'slot', tool: '-z', x: ['open', 'open'], y: [at.from(y, 14, 'a'), at.from(y, 15.2, 'b')], z: [at.from(z, 10, 'floor'), 'open'] })]));
    expect(riskAt(stakesIn(slot), 10, 'thin wall')).toBeUndefined();
  });
  it('between a pocket and the grooves of the crosshead', async () => {
    const wide = stakesIn(await partWith('crosshead', { pocketHeight: '0.54 in' }));
    // The grooves' floors stand 0.625 in apart.
    expect(riskAt(wide, op('groove-upper'), 'blind depth')?.figures['floor']).toBeCloseTo(((0.625 - 0.54) / 2) * inch, 6);
    expect(riskAt(stakes, op('groove-upper'), 'blind depth')).toBeUndefined();
  });
});

describe('a cutter beside what must stay', () => {
  const step = (gap: number): Part => block(({ at, cut, x, z }) => [
    { title: 'Rough', cutter: { name: 'end mill' }, cuts: [cut.pocket({ id: 'a', name: 'high step', tool: '-z', x: [at.from(x, 20, 'wall'), 'open'], y: ['open', 'open'], z: [at.from(z, 15, 'a'), 'open'] })] },
    { title: 'Cut', cutter: { name: 'end mill' }, cuts: [cut.pocket({ id: 'b', name: 'low step', tool: '-z', x: [at.from(x, 20 + gap, 'second'), 'open'], y: ['open', 'open'], z: [at.from(z, 10, 'b'), 'open'] })] },
  ]);
  it('is told with its clearance and how high it stands', () => {
    const risk = riskAt(stakesIn(step(1)), 20, 'cutter beside a wall');
    expect(risk?.figures).toMatchObject({ beside: 'high step', clearance: expect.closeTo(1, 3) as number });
    expect(risk?.chance).toBeCloseTo(0.06 * Math.sqrt(0.5), 4);
  });
  it('is likelier the nearer it is, and none beyond the radius of the cutter', () => {
    const chance = (gap: number): number => riskAt(stakesIn(step(gap)), 20, 'cutter beside a wall')?.chance ?? 0;
    expect(chance(0.4)).toBeGreaterThan(chance(1));
    expect(chance(1)).toBeGreaterThan(chance(4));
    expect(chance(8)).toBe(0);
  });
  it('is the lug of the crosshead, all round which the cutter runs', () => {
    const risk = riskAt(stakes, op('outer-cheek'), 'cutter beside a wall');
    expect(risk?.figures['width']).toBeCloseTo(0.3125 * inch, 6);
    expect(risk?.figures['height']).toBeCloseTo(0.0625 * inch, 4);
  });
});

describe('holes that go on', () => {
  it('across a gap start again', () => {
    expect(riskAt(stakes, op('cross-bore'), 'break-through')?.figures).toMatchObject({ into: 'rod pocket', gaps: 1, slope: 'no' });
  });
  it('on a slope are worse, square through are nothing', () => {
    const through = (angle: number): Part => block(({ at, cut, x, y, z }) => [
      ...(angle === 0 ? [] : [{ title: 'Bevel', cutter: { name: 'end mill' }, cuts: [cut.bevel({ id: 'v', name: 'bevel', start: [x, at.from(z, 1, 'start')], along: '+x', into: '+z', angle, until: at.from(x, 30, 'end') })] }]),
      { title: 'Drill', cutter: { name: 'drill' }, cuts: [cut.hole({ id: 'h', name: 'hole', entry: at.from(z, 20, 'top face'), direction: '-z', at: [[at.from(x, 15, 'hx'), at.from(y, 15, 'hy')]], diameter: sized(5) })] },
    ]);
    expect(riskAt(stakesIn(through(20)), 20, 'break-through')).toMatchObject({ chance: expect.closeTo(0.06, 9) as number, figures: { slope: 'yes', into: 'bevel' } });
    expect(riskAt(stakesIn(through(0)), 10, 'break-through')).toBeUndefined();
  });
});

describe('what the set-up brings', () => {
  it('angle packing', () => {
    expect(riskAt(stakes, op('bevel-outer'), 'angled set-up')?.figures['angle']).toBeCloseTo(30, 9);
    expect(riskAt(stakes, op('inner-cheek'), 'angled set-up')).toBeUndefined();
  });
  it('a hole that leans', () => {
    const part = block(one('drill', ({ at, cut, x, y, z }) => [cut.hole({ id: 'h', name: 'hole', entry: at.from(z, 20, 'top face'), direction: '-z', tilt: { toward: '+x', angle: 25 }, at: [[at.from(x, 15, 'hx'), at.from(y, 15, 'hy')]], diameter: sized(4), depth: sized(8) })]));
    expect(riskAt(stakesIn(part), 10, 'angled set-up')).toMatchObject({ chance: expect.closeTo(0.08, 9) as number, figures: { angle: 25 } });
  });
  it('a zero whose doubt is as large as the tolerance: the second cheek of the crosshead, 0.03 + 0.02 against 0.0508', () => {
    const risk = riskAt(stakes, op('inner-cheek'), 'uncertain datum')!;
    expect(risk.figures).toMatchObject({ spread: expect.closeTo(0.05, 9) as number, tolerance: expect.closeTo(2 * 0.0254, 9) as number });
    expect(risk.chance).toBeCloseTo((0.08 * 0.05) / 0.0508, 6);
  });
  it('less where metal is left and measured first', () => {
    const hasty = { ...crosshead, operations: crosshead.operations.map(({ leave, ...operation }) => (leave === undefined ? operation : { ...operation, title: `${operation.title} at once` })) };
    expect(riskAt(stakes, op('groove-lower'), 'uncertain datum')!.chance).toBeCloseTo(0.35 * riskAt(stakesIn(hasty), op('groove-lower'), 'uncertain datum')!.chance, 9);
  });
  it('nothing from the zero of the first set-up', () => {
    expect(['front', 'boss', 'rod-hole', 'register'].map(op).map((operation) => riskAt(stakes, operation, 'uncertain datum'))).toEqual([undefined, undefined, undefined, undefined]);
  });
  it('a long overhang, where the set-up says by what it holds', () => {
    const [land, head] = ['end of the head land', 'head face'].map((name) => pin.stations.find((station) => station.name === name)!.id) as [string, string];
    const held = (holding: string): Part => ({ ...pin, setUps: pin.setUps.map((setUp) => (setUp.id === 'A' ? { ...setUp, holding, grip: { kind: 'three-jaw chuck', between: [head, land] } } : setUp)) });
    const risk = riskAt(stakesIn(held('three-jaw chuck')), ofPin('tail'), 'long overhang')!;
    const tail = pin.stations.find(({ name }) => name === 'tail end')!.value;
    const out = tail - pin.stations.find(({ id }) => id === land)!.value;
    expect(risk.figures).toMatchObject({ overhang: expect.closeTo(out, 6) as number, diameter: expect.closeTo(0.19 * inch, 6) as number, free: 3 });
    expect(riskAt(stakesIn(held('three-jaw chuck, then the tailstock centre')), ofPin('tail'), 'long overhang')).toBeUndefined();
  });
});

describe('the rest', () => {
  it('fits, seats, heat and the parting tool', () => {
    // H7 at 6.35 mm is 15 micrometres wide (ISO 286-1, 6 to 10 mm).
    expect(riskAt(stakes, op('cross-bore'), 'reamed fit')).toMatchObject({ chance: expect.closeTo(0.04, 6) as number, figures: { tolerance: expect.closeTo(0.015, 9) as number } });
    expect(riskAt(stakes, op('pin-seat'), 'conical seat')?.chance).toBeCloseTo(0.05, 9);
    expect(riskAt(stakesOfPin, ofPin('taper'), 'conical seat')?.figures['angle']).toBeCloseTo(90, 6);
    expect(riskAt(stakesOfPin, ofPin('head-face'), 'parting')).toBeDefined();
    expect(riskAt(stakesOfPin, ofPin('Harden and temper'), 'hardening')).toBeDefined();
    expect(riskAt(stakesOfPin, ofPin('Lap the body to size'), 'close size')?.figures['size']).toBe('bearing body');
    expect(riskAt(stakesOfPin, ofPin('body'), 'close size')).toBeUndefined();
  });
  it('a long cutter in the rod pocket, 7/8 in with one of 3/16', () => {
    expect(riskAt(stakes, op('rod-pocket'), 'narrow slot')?.figures['depthOverCutter']).toBeCloseTo(0.875 / 0.1875, 4);
  });
  it('a thin drill that goes deep', () => {
    const part = (depth: number): Part => block(one('drill', ({ at, cut, x, y, z }) => [cut.hole({ id: 'h', name: 'hole', entry: at.from(z, 20, 'top face'), direction: '-z', at: [[at.from(x, 15, 'hx'), at.from(y, 15, 'hy')]], diameter: sized(1.5), depth: sized(depth) })]));
    expect(riskAt(stakesIn(part(4.5)), 10, 'small drill')?.chance).toBeCloseTo(0.005, 9);
    expect(riskAt(stakesIn(part(9)), 10, 'small drill')?.chance).toBeCloseTo(0.01, 9);
    expect(riskAt(stakesIn(part(3)), 10, 'small drill')).toBeUndefined();
  });
  it('a cut that makes the hand, with its share', () => {
    const handed = stakesIn(crosshead, { makers: [{ cut: 'outer-cheek', volume: 58 }, { cut: 'lug-hole', volume: 41.5 }, { cut: 'register', volume: 0.5 }] });
    expect(riskAt(handed, op('outer-cheek'), 'handed position')?.figures['share']).toBeCloseTo(0.58, 9);
    expect(riskAt(handed, op('lug-hole'), 'handed position')).toBeDefined();
    expect(riskAt(handed, op('register'), 'handed position')).toBeUndefined();
  });
  it('a size whose tolerance is wide is no risk', () => {
    const bored = (tolerance: number): Part => block(one('boring head', ({ at, cut, x, y, z }) => [cut.hole({ id: 'h', name: 'bore', entry: at.from(z, 20, 'top face'), direction: '-z', at: [[at.from(x, 20, 'hx'), at.from(y, 15, 'hy')]], diameter: sized(12, { tolerance: { kind: 'plus-minus', value: tolerance } }), finish: 'bored' })]));
    expect(riskAt(stakesIn(bored(0.01)), 10, 'close size')?.chance).toBeCloseTo(0.04, 9);
    expect(riskAt(stakesIn(bored(0.03)), 10, 'close size')).toBeUndefined();
    expect(fit('H7', 12)).toMatchObject({ kind: 'fit' });
  });
});
