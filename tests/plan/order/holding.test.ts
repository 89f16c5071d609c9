import { beforeAll, describe, expect, it } from 'vitest';
import type { Part } from '../../../engine/part/part.js';
import { builtInPart } from '../../support/built-in-part.js';
import { block } from './block.js';
import { beyond, findingsIn, of, sentence, short, withOperation, withSetUp } from './found.js';
import { ring } from './ring.js';

let crosshead: Part;
let pin: Part;
beforeAll(async () => {
  crosshead = await builtInPart('crosshead');
  pin = await builtInPart('crosshead-pin');
});

const grips = (part: Part) => of(findingsIn(part), 'grip');

describe('in the vice', () => {
  const pocketed = (change: (part: Part) => Part = (part) => part) => grips(change(block((cut, { at }) => [{ cutter: 'end mill', cuts: [cut.pocket({ id: 'step', name: 'step', tool: '-z', x: ['open', 'open'], y: ['open', 'open'], z: [at('z', 14), 'open'] })] }])));

  it('work is held where the faces stand opposite, high enough, below the cut', () => expect(pocketed()).toEqual([]));

  it('faces that are not upright, not two, or not there cannot be held by', () => {
    expect(sentence(pocketed((part) => withSetUp(part, 'A', { grip: { kind: 'vice', between: ['z:bottom', 'z:top'] } }))[0]!.sentence)).toContain('do not stand upright');
    expect(sentence(pocketed((part) => withSetUp(part, 'A', { grip: { kind: 'vice', between: ['x:left', 'y:far'] } }))[0]!.sentence)).toContain('no two sides');
    // The far face is taken off before the second set-up holds by it.
    const lost = block((cut, { at }) => [{ cutter: 'end mill', cuts: [beyond('slice', [0, 25, 0], [0, 1, 0])] }, { cutter: 'end mill', setUp: 'B', cuts: [cut.face({ id: 'top', name: 'top', at: at('z', 19), side: '+z' })] }], {
      setUps: [{ id: 'B', machine: 'mill', holding: 'vice', grip: { kind: 'vice', between: ['y:near', 'y:far'] }, up: '+z', right: '+x', zero: ['x:left'] }],
    });
    const found = of(findingsIn(lost), 'grip', 'fatal');
    expect(short(found).at(-1)).toBe('20 fatal grip');
    expect(sentence(found.at(-1)!.sentence)).toContain('is not there');
  });

  it.each([
    [5, 'warning', 'Little to hold by'],
    [1, 'fatal', 'The jaws would be cut'],
  ] as const)('cut down to %d of 20 it is a %s', (height, gravity, words) => {
    const found = grips(block((cut, { at }) => [{ cutter: 'end mill', cuts: [cut.face({ id: 'top', name: 'top', at: at('z', height), side: '+z' })] }]));
    expect(grips(block((cut, { at }) => [{ cutter: 'end mill', cuts: [cut.face({ id: 'top', name: 'top', at: at('z', 7), side: '+z' })] }]))).toEqual([]);
    expect(found.map((finding) => finding.gravity)).toEqual([gravity]);
    expect(sentence(found[0]!.sentence)).toContain(words);
    if (gravity === 'warning') expect(found[0]!.figures).toMatchObject({ height: 5, length: 40, contact: 200, workHeight: 20 });
  });

  it('a cut past the end of the jaws takes nothing from them; one across them does', () => {
    const slot = (x: readonly [number, number]) => grips(block((cut, { at }) => [{ cutter: 'end mill', cuts: [cut.pocket({ id: 'end', name: 'end', tool: '-z', x: [at('x', x[0]), at('x', x[1])], y: ['open', 'open'], z: ['open', 'open'] })] }]));
    expect(slot([34, 39])).toEqual([]);
    expect(short(slot([0.5, 39.5]))).toEqual(['10 fatal grip']);
  });

  it('a thin wall over a hollow is told; short jaws go between what stands proud at both ends', () => {
    const hollow = block((cut, { at }) => [{ cutter: 'end mill', cuts: [cut.pocket({ id: 'well', name: 'well', tool: '-z', x: [at('x', 2), at('x', 38)], y: [at('y', 1.5), at('y', 28.5)], z: [at('z', 1), 'open'], corner: 3 })] }, { cutter: 'end mill', setUp: 'B', cuts: [cut.face({ id: 'top', name: 'top', at: at('z', 19.5), side: '+z' })] }], {
      setUps: [{ id: 'B', machine: 'mill', holding: 'vice', grip: { kind: 'vice', between: ['y:near', 'y:far'] }, up: '+z', right: '+x', zero: ['x:left'] }],
    });
    const [thin] = of(findingsIn(hollow), 'grip').filter(({ operation }) => operation === 20);
    expect(thin).toMatchObject({ gravity: 'warning', figures: { wall: 1.5, limit: 2 } });
    const proud = block((cut, { at }) => [{ cutter: 'end mill', cuts: [cut.pocket({ id: 'rebate', name: 'rebate', tool: '-z', x: [at('x', 5), at('x', 35)], y: ['open', at('y', 4)], z: ['open', 'open'] })] }, { cutter: 'end mill', setUp: 'B', cuts: [cut.face({ id: 'top', name: 'top', at: at('z', 19.5), side: '+z' })] }], {
      setUps: [{ id: 'B', machine: 'mill', holding: 'vice', grip: { kind: 'vice', between: ['y:y 4', 'y:far'] }, up: '+z', right: '+x', zero: ['x:left'] }],
    });
    expect(of(findingsIn(proud), 'grip').filter(({ operation }) => operation === 20)).toEqual([]);
  });
});

it('what stands proud of a face where the jaws are is told, but not where packing is relieved for it', () => {
  const holding = { id: 'B', machine: 'mill', holding: 'vice', grip: { kind: 'vice', between: ['y:y 4', 'y:far'] }, up: '+z', right: '+x', zero: ['x:left'] } as const;
  const bossed = block((cut, { at }) => [{ cutter: 'end mill', cuts: [cut.clearAround({ id: 'side', name: 'near side', at: at('y', 4), side: '-y', keep: [[at('x', 18), at('x', 22)], [at('z', 8), at('z', 12)]] })] }, { cutter: 'end mill', setUp: 'B', cuts: [cut.face({ id: 'top', name: 'top', at: at('z', 19.5), side: '+z' })] }], { setUps: [holding] });
  const [found] = of(findingsIn(bossed), 'grip').filter(({ operation }) => operation === 20);
  expect(found).toMatchObject({ gravity: 'warning', figures: { proud: 4 } });
  expect(of(findingsIn(withSetUp(bossed, 'B', { holding: 'vice, packing relieved for the boss' })), 'grip').filter(({ operation }) => operation === 20)).toEqual([]);
});

describe('in the chuck', () => {
  it('the crosshead and its pin are held soundly', () => {
    expect(grips(crosshead)).toEqual([]);
    expect(grips(pin)).toEqual([]);
  });

  it('jaws where the boss is turned are cut', () => {
    const found = grips(withSetUp(crosshead, 'A', { grip: { kind: 'four-jaw chuck', between: ['z:front face', 'z:shoulder'] } }));
    expect(short(found)).toEqual(['20 fatal grip']);
    expect(sentence(found[0]!.sentence)).toContain('The jaws would be cut');
  });

  it('no metal, too little length and too little are told apart', () => {
    const held = (far: number) => grips(ring({ grip: [0, far] }))[0];
    expect(held(12)).toBeUndefined();
    expect(held(6)).toMatchObject({ gravity: 'warning', figures: { length: 6, diameter: 30, wanted: 10 } });
    expect(held(2)).toMatchObject({ gravity: 'fatal' });
    expect(grips(ring({ grip: [-30, -20] }))[0]).toMatchObject({ gravity: 'fatal', figures: { length: 0 } });
  });

  it('a thin ring is told, but not where a plug or soft jaws spare it', () => {
    const [found] = grips(ring({ grip: [0, 12], bore: 26 }));
    expect(found).toMatchObject({ gravity: 'warning', operation: 20, figures: { wall: 2, diameter: 30 } });
    expect(grips(ring({ grip: [0, 12], bore: 26, holding: 'three-jaw chuck, on a plug' }))).toEqual([]);
    expect(grips(ring({ grip: [0, 12], bore: 10 }))).toEqual([]);
  });

  it('a square bar does not run true in three jaws', () => {
    const found = grips(withSetUp(crosshead, 'A', { grip: { kind: 'three-jaw chuck', between: ['z:pin axis', 'z:rear face'] } }));
    expect(found.map(({ gravity, figures }) => [gravity, figures['flats']])).toEqual([['warning', 4]]);
  });

  it('between centres there must be two of them', () => {
    const found = grips(withOperation(pin, pin.operations.find(({ cuts }) => cuts.some(({ id }) => id === 'head-centre'))!.number, (operation) => ({ ...operation, cuts: [] })));
    expect(found.map(({ gravity, figures }) => [gravity, figures['end']])).toEqual([['fatal', 'headstock']]);
  });
});

describe('a finished surface', () => {
  it('that is gripped is told, unless a bush spares it', () => {
    expect(of(findingsIn(pin), 'finished surface gripped')).toEqual([]);
    const found = of(findingsIn(withSetUp(pin, 'B', { holding: 'three-jaw chuck, by the body' })), 'finished surface gripped');
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ gravity: 'warning', figures: { cut: 'body', texture: 0.8, fit: 'g6' } });
  });
});

it('clamps on what is cut away are told', () => {
  const clamped = (z: number) => withSetUp(block((cut, { at }) => [{ cutter: 'end mill', cuts: [cut.pocket({ id: 'step', name: 'step', tool: '-z', x: ['open', at('x', z)], y: ['open', 'open'], z: [at('z', 15), 'open'] })] }]), 'A', { grip: { kind: 'clamps', between: ['z:bottom', 'z:top'] } });
  expect(grips(clamped(10))).toEqual([]);
  expect(short(grips(clamped(30)))).toEqual(['10 warning grip']);
  expect(short(grips(clamped(39)))).toEqual(['10 fatal grip']);
});

it('a set-up without a grip says that it cannot tell', () => {
  const { grip, ...loose } = crosshead.setUps[0]!;
  expect(grip).toBeDefined();
  expect(short(grips({ ...crosshead, setUps: [loose, ...crosshead.setUps.slice(1)] }))).toEqual(['10 remark grip']);
});
