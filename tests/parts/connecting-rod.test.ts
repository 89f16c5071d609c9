import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { mirrorPart } from '../../engine/part/mirror.js';
import type { PartGenerator } from '../../engine/part/generator.js';
import type { Values } from '../../engine/part/parameters.js';
import { resolveValues } from '../../engine/part/resolve.js';
import { UserError } from '../../engine/units/user-error.js';
import { solidOf } from '../../engine/solid/build.js';
import { symmetricDifferenceVolume } from '../../engine/solid/combine.js';
import { compareSolidHands } from '../../engine/solid/hand.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { volumeOf } from '../../engine/solid/measure.js';
import { reflectSolid } from '../../engine/solid/reflect.js';
import rod from '../../generators/parts/connecting-rod.js';
import type { connectingRodParameters } from '../../generators/parts/connecting-rod/parameters.js';
import { settingsOf } from '../sheet/random-values.js';
import { printsOf } from '../support/print.js';
import { unpairedEdges, volumeBound, worstMiddle, worstVertex } from '../support/solid-checks.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

type RodValues = Values<typeof connectingRodParameters>;
const valuesWith = (settings: Readonly<Record<string, string>>): RodValues => resolveValues(rod, settings, undefined);

/** The last operation before the oil holes. */
const rounded = 60;

/** Under a circle about the origin, from its middle to `to`: a triangle and a sector. */
const underCircle = (radius: number, to: number): number => (to * Math.sqrt(radius * radius - to * to) + radius * radius * Math.asin(to / radius)) / 2;

/** Half the outline over one boss: a quarter disc, the boss as far as its fillet, and the fillet. */
function bossArea(radius: number, edge: number, fillet: number): { readonly area: number; readonly length: number } {
  const length = Math.sqrt((radius + fillet) ** 2 - (edge + fillet) ** 2);
  const touch = (length * radius) / (radius + fillet);
  const corner = (edge + fillet) * (length - touch) - underCircle(fillet, length - touch);
  return { area: (Math.PI * radius * radius) / 4 + underCircle(radius, touch) + corner, length };
}

/** The rod before its oil holes are drilled, by its formula. */
function volumeOfRod(p: RodValues): number {
  const edge = p.shankHeight / 2;
  const [big, small] = [bossArea(p.bigRadius, edge, p.fillet), bossArea(p.smallRadius, edge, p.fillet)];
  const outline = 2 * (big.area + small.area + edge * (p.centres - big.length - small.length));
  const bores = (Math.PI / 4) * (p.bigBore ** 2 + p.smallBore ** 2);
  const flute = p.fluteWidth * (p.centres - p.fluteFromBig - p.fluteFromSmall) + (Math.PI / 4) * p.fluteWidth ** 2;
  return (outline - bores) * p.thickness - (p.fluted === 'both sides' ? 2 : 1) * flute * p.fluteDepth;
}

describe('the connecting rod', () => {
  it.each(['outer side', 'both sides'])('fluted on the %s has the volume of its outline less bores and flutes', (fluted) => {
    const p = valuesWith({ fluted });
    const solid = solidOf(kernel, rod.build(p), { through: rounded });
    expect(Math.abs(volumeOf(solid) - volumeOfRod(p))).toBeLessThanOrEqual(volumeBound(solid));
    expect(volumeOfRod(p) / volumeOf(solid)).toBeCloseTo(1, 2);
  });

  it('is closed, on its surfaces, and of that volume for any sizes that are allowed', () => {
    fc.assert(
      fc.property(settingsOf(rod as unknown as PartGenerator), (settings) => {
        const p = valuesWith(settings);
        const part = rod.build(p);
        const before = solidOf(kernel, part, { through: rounded });
        expect(Math.abs(volumeOf(before) - volumeOfRod(p))).toBeLessThanOrEqual(volumeBound(before));
        const solid = solidOf(kernel, part);
        expect(unpairedEdges(solid)).toBe(0);
        expect(worstVertex(solid)).toBeLessThanOrEqual(solid.facetError + 1e-5);
        expect(worstMiddle(solid)).toBeLessThanOrEqual(solid.facetError + 1e-5);
        expect(volumeOf(solid)).toBeLessThan(volumeOf(before));
      }),
      { seed: 31, numRuns: 20 },
    );
  });

  it('is handed where it is fluted on one side, and not where on both; the left hand is the mirror image of the right', () => {
    const part = rod.build(valuesWith({}));
    const solid = solidOf(kernel, part);
    expect(compareSolidHands(kernel, solid, part.handAxis).handed).toBe(true);
    expect(symmetricDifferenceVolume(kernel, solidOf(kernel, mirrorPart(part)), reflectSolid(solid, part.handAxis))).toBeLessThan(volumeBound(solid));
    const both = rod.build(valuesWith({ fluted: 'both sides' }));
    expect(compareSolidHands(kernel, solidOf(kernel, both), both.handAxis).handed).toBe(false);
  });

  it('becomes handed at the oil holes, last of all: until then both hands are one blank', () => {
    const part = rod.build(valuesWith({}));
    expect(compareSolidHands(kernel, solidOf(kernel, part, { through: rounded }), part.handAxis).handed).toBe(false);
  });

  it.each([
    [{ fluteDepth: '0.22 in' }, /^a third of the thickness stays as web: /],
    [{ fluteDepth: '0.11 in', fluted: 'both sides' }, /^a third of the thickness stays as web: /],
    [{ fluteFromBig: '0.8 in' }, /^the flute stops short of the big end, by its cutter’s radius: /],
    [{ fluteFromSmall: '0.6 in' }, /^the flute stops short of the little end, by its cutter’s radius: /],
    [{ fluteWidth: '0.35 in' }, /^the flutes leave flanges: /],
    [{ bigBore: '1 in' }, /^the big end leaves a wall about its bore: /],
    [{ smallRadius: '0.26 in' }, /^the little end leaves a wall about its bore: /],
    [{ barWidth: '1 in' }, /^the bar is wide enough for the big end and a cleaning cut each side: /],
    [{ oilCup: '0.07 in' }, /^the oil cups are wider than their holes: /],
  ])('refuses %o', (settings, sentence) => {
    expect(() => valuesWith(settings)).toThrow(UserError);
    expect(() => valuesWith(settings)).toThrow(sentence);
  });
});

describe('the print of the connecting rod', () => {
  it.each([
    ['A3', { fluted: 'outer side' }, ['right', 'left'], '2x full R'],
    ['A4', { fluted: 'both sides' }, ['none'], '4x full R'],
  ])('says all sizes once, on %s with %o', async (paper, settings, hands, rounds) => {
    const prints = await printsOf('connecting-rod', { paper, settings });
    expect(prints.map(({ record }) => record.hand)).toEqual(hands);
    for (const { record } of prints) {
      expect(record.checks.filter(({ passed }) => !passed)).toEqual([]);
      const texts = record.dimensions.map(({ text }) => text.join(' '));
      expect(texts.filter((text) => text.includes('full R'))).toEqual([rounds]);
      expect(texts.filter((text) => text.startsWith('6.500'))).toEqual(['6.500 ±.001']);
      expect(texts.filter((text) => text.startsWith('4x R'))).toEqual(['4x R.250']);
    }
  });
});
