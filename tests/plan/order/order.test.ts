import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { mirrorPart } from '../../../engine/part/mirror.js';
import type { Part } from '../../../engine/part/part.js';
import { resolveValues } from '../../../engine/part/resolve.js';
import { checkGenerator } from '../../../engine/part/check-generator.js';
import { handFindings, handOperation } from '../../../engine/plan/order/hand-operation.js';
import { stopsOf } from '../../../engine/plan/order/stops.js';
import { statesOf } from '../../../engine/plan/states/state.js';
import { compareHands } from '../../../engine/solid/hand.js';
import { loadKernel, type Kernel } from '../../../engine/solid/kernel.js';
import { settingsOf } from '../../sheet/random-values.js';
import { builtInPart } from '../../support/built-in-part.js';
import { beyond, findingsIn, inOrder, of, sentence, short, withOperation, without, withSetUp } from './found.js';

let kernel: Kernel;
let crosshead: Part;
let pin: Part;
beforeAll(async () => {
  kernel = await loadKernel();
  crosshead = await builtInPart('crosshead');
  pin = await builtInPart('crosshead-pin');
});

describe('a sound part', () => {
  it.each(['crosshead', 'crosshead-pin', 'gland-nut', 'valve-rod-fork', 'connecting-rod', 'expansion-link'])('%s has nothing fatal', async (name) => {
    expect(findingsIn(await builtInPart(name)).filter(({ gravity }) => gravity === 'fatal')).toEqual([]);
  });

  it('is found alike in both hands', () => expect(short(findingsIn(mirrorPart(crosshead)))).toEqual(short(findingsIn(crosshead))));

  it('gives findings for any sizes that are allowed, each with finite figures', async () => {
    const path = new URL('../../../generators/parts/crosshead.ts', import.meta.url).href;
    const generator = checkGenerator(((await import(path)) as { readonly default: unknown }).default, 'crosshead');
    fc.assert(
      fc.property(settingsOf(generator), (settings) => {
        const found = findingsIn(generator.build(resolveValues(generator, settings, undefined)));
        for (const { figures } of found) for (const figure of Object.values(figures)) if (typeof figure === 'number') expect(Number.isFinite(figure)).toBe(true);
      }),
      { seed: 77, numRuns: 4 },
    );
  });
});

describe('taps', () => {
  const tapped = (depth: number) => of(findingsIn(withOperation(crosshead, 100, (operation) => ({ ...operation, cuts: operation.cuts.map((cut) => ({ ...cut, sizes: cut.sizes.map((size) => (size.kind === 'tapping' ? { ...size, depth: { value: depth, purpose: 'size' as const } } : size)) })) }))), 'tap depth');

  it('that would jam on the bottom are found, with the pitches that are left', () => {
    expect(tapped(0.11 * 25.4)).toEqual([]);
    // 0-80 drilled .15 deep: 1.5 pitches of lead and one for chips are .03125.
    expect(tapped(0.12 * 25.4)[0]).toMatchObject({ gravity: 'warning', operation: 100, figures: { thread: '0-80 UNF' } });
    const [jams] = tapped(0.135 * 25.4);
    expect(jams).toMatchObject({ gravity: 'fatal', operation: 100 });
    expect(jams?.figures['pitches']).toBeCloseTo(1.2, 3);
  });

  it('without a hole are found', () => expect(short(of(findingsIn(without(crosshead, 90)), 'tap depth'))).toEqual(['100 fatal tap depth']));
});

describe('overhang', () => {
  it('is sound with a centre in the end, and told without one', () => {
    expect(of(findingsIn(pin), 'overhang')).toEqual([]);
    const centre = pin.operations.find(({ cuts }) => cuts.some(({ id }) => id === 'tail-centre'))!;
    const found = of(findingsIn(without(pin, centre.number)), 'overhang');
    expect(found.length).toBeGreaterThan(0);
    for (const { gravity, figures } of found) {
      expect(figures['centre']).toBe('no');
      expect(figures['ratio']).toBeGreaterThan(3);
      expect(gravity).toBe((figures['ratio'] as number) > 6 ? 'fatal' : 'warning');
    }
  });
});

describe('datums', () => {
  it('that are cut away before a set-up needs them are found', () => {
    const spoiled = withOperation(withSetUp(crosshead, 'E', { zero: ['y:bar faces, high', 'z:front face', 'x:rod axis'] }), 120, (operation) => ({ ...operation, cuts: [...operation.cuts, beyond('slip', [0, 12, 0], [0, 1, 0])] }));
    const found = of(findingsIn(spoiled), 'datum');
    expect(found[0]).toMatchObject({ gravity: 'fatal', operation: 150, figures: { station: 'y:bar faces, high', setUp: 'E' } });
    expect(sentence(found[0]!.sentence)).toContain('operation 120 has cut away');
  });

  it('that are not there yet are found', () => {
    const early = inOrder(withSetUp(crosshead, 'C', { zero: ['x:rod axis', 'z:rear face', 'y:rod axis'] }), [10, 20, 30, 40, 50, 80, 90, 100, 110, 60, 70, 120]);
    expect(short(of(findingsIn(early), 'datum'))).toEqual(['60 warning datum']);
  });

  it('are all sound on the crosshead', () => expect(of(findingsIn(crosshead), 'datum')).toEqual([]));
});

describe('the hand', () => {
  it('is made by the first operation with a cut that makes it, which could come later', () => {
    const comparison = compareHands(kernel, crosshead);
    const hand = handOperation(crosshead, statesOf(kernel, crosshead), comparison);
    const makers = new Set(comparison.makers.filter(({ volume }) => volume >= 0.02 * comparison.leftOver).map(({ cut }) => cut));
    expect(hand?.operation.number).toBe(crosshead.operations.find(({ cuts }) => cuts.some(({ id }) => makers.has(id)))!.number);
    expect(hand?.cuts.map(({ id }) => id)).toEqual(['oil-hole']);
    expect(hand?.couldFollow?.number).toBe(140);
    expect(hand?.latest).toBe(false);
  });

  it('comes as late as the order allows once that is done', () => {
    const numbers = crosshead.operations.map(({ number }) => number).filter((number) => number !== 110);
    const late = inOrder(crosshead, numbers.flatMap((number) => (number === 140 ? [140, 110] : [number])));
    const [finding] = handFindings(late, statesOf(kernel, late), compareHands(kernel, late));
    expect(finding?.operation).toBe(140);
    expect(sentence(finding!.sentence)).toContain('as late as the order allows');
  });

  it('is nothing for a part that has none', () => expect(handOperation(pin, statesOf(kernel, pin), compareHands(kernel, pin))).toBeUndefined());
});

describe('stops', () => {
  it('stand before close sizes, before the hand, and where the axis is given up', () => {
    const stops = stopsOf(crosshead, statesOf(kernel, crosshead), compareHands(kernel, crosshead));
    expect(stops.map(({ when, operation, kind }) => `${when} ${operation} ${kind}`)).toEqual(['before 40 measure', 'after 50 no return', 'before 80 measure', 'before 110 no return', 'before 120 measure']);
    expect(sentence(stops[4]!.words)).toContain('groove floors 15.875');
  });

  it('stand before parting off', async () => {
    const nut = await builtInPart('gland-nut');
    const parting = nut.operations.find(({ title }) => /part off/i.test(title))!;
    expect(stopsOf(nut, statesOf(kernel, nut)).some(({ when, operation, kind }) => when === 'before' && operation === parting.number && kind === 'no return')).toBe(true);
  });
});
