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
import link from '../../generators/parts/expansion-link.js';
import type { expansionLinkParameters } from '../../generators/parts/expansion-link/parameters.js';
import { settingsOf } from '../sheet/random-values.js';
import { printsOf } from '../support/print.js';
import { unpairedEdges, volumeBound, worstMiddle, worstVertex } from '../support/solid-checks.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

type LinkValues = Values<typeof expansionLinkParameters>;
const valuesWith = (settings: Readonly<Record<string, string>>): LinkValues => resolveValues(link, settings, undefined);

/** A band along an arc with round ends: middle line times width, and a disc. */
const band = (radius: number, angle: number, width: number): number => radius * angle * width + (Math.PI * width * width) / 4;

/** The link by its formula: band less slot, times thickness; less holes; less what the countersinks take beyond their holes. */
function volumeOfLink(p: LinkValues): number {
  const angle = (height: number): number => Math.asin(height / p.radius);
  const body = band(p.radius, angle(p.tailDrop) + angle(p.bracketSpan / 2), 2 * p.endRadius);
  const slot = band(p.radius, 2 * angle(p.slotLength / 2), p.slotWidth);
  const holes = (Math.PI / 4) * (p.tailHole ** 2 + 2 * p.bracketHole ** 2);
  const [wide, narrow] = [p.screwHead / 2, p.bracketHole / 2];
  const seat = (Math.PI / 3) * (wide - narrow) * (wide * wide + wide * narrow + narrow * narrow) - Math.PI * narrow * narrow * (wide - narrow);
  return (body - slot - holes) * p.thickness - 2 * seat;
}

describe('the expansion link', () => {
  it('has the volume of a band along an arc, less slot, holes and countersinks', () => {
    const p = valuesWith({});
    const solid = solidOf(kernel, link.build(p));
    expect(Math.abs(volumeOf(solid) - volumeOfLink(p))).toBeLessThanOrEqual(volumeBound(solid));
    expect(volumeOfLink(p) / volumeOf(solid)).toBeCloseTo(1, 2);
  });

  it('is closed, on its surfaces, and of that volume for any sizes that are allowed', () => {
    fc.assert(
      fc.property(settingsOf(link as unknown as PartGenerator), (settings) => {
        const p = valuesWith(settings);
        const solid = solidOf(kernel, link.build(p));
        expect(unpairedEdges(solid)).toBe(0);
        expect(worstVertex(solid)).toBeLessThanOrEqual(solid.facetError + 1e-5);
        expect(worstMiddle(solid)).toBeLessThanOrEqual(solid.facetError + 1e-5);
        expect(Math.abs(volumeOf(solid) - volumeOfLink(p))).toBeLessThanOrEqual(volumeBound(solid));
      }),
      { seed: 30, numRuns: 25 },
    );
  });

  it('is handed by its countersinks alone, and the left hand is the mirror image of the right', () => {
    const part = link.build(valuesWith({}));
    const solid = solidOf(kernel, part);
    const { handed, makers } = compareSolidHands(kernel, solid, part.handAxis);
    expect(handed).toBe(true);
    expect(makers.map(({ cut }) => cut)).toEqual(['screw-seats']);
    expect(symmetricDifferenceVolume(kernel, solidOf(kernel, mirrorPart(part)), reflectSolid(solid, part.handAxis))).toBeLessThan(volumeBound(solid));
  });

  it('stands on one circle: slot ends and holes are as far from the centre of the radius', () => {
    const p = valuesWith({ radius: '80 mm', barWidth: '1 1/4 in' });
    const part = link.build(p);
    const sizes = part.operations.flatMap(({ cuts }) => cuts.flatMap((cut) => cut.sizes));
    const slot = sizes.find((size) => size.kind === 'arc-slot')!;
    const places = [...slot.ends, ...sizes.flatMap((size) => (size.kind === 'hole' ? size.points : []))];
    expect(places).toHaveLength(5);
    for (const [, y, z] of places) expect(Math.hypot(y - slot.centre[1], z - slot.centre[2])).toBeCloseTo(80, 9);
    expect(slot.centre.slice(1)).toEqual([0, -80]);
  });

  it.each([
    [{ blockTravel: '3/8 in' }, /^the slot ends beyond the travel of the die block: /],
    [{ slotWidth: '7/16 in' }, /^the rails beside the slot are stout: /],
    [{ bracketSpan: '2 1/8 in' }, /^the bracket screws stand a rail from the slot: /],
    [{ tailDrop: '1 7/16 in' }, /^the tail pin stands clear of the bracket screw: /],
    [{ tailHole: '0.51 in', tailDrop: '1 3/4 in' }, /^the tail pin leaves a wall in the end: /],
    [{ screwHead: '0.17 in' }, /^the screw heads are larger than the screws: /],
    [{ radius: '3 in' }, /^the link curves gently: /],
    [{ barWidth: '7/8 in' }, /^the plate is wide enough for the curved link: /],
    [{ thickness: '1/8 in' }, /^the countersinks leave half the thickness to the screws: /],
  ])('refuses %o', (settings, sentence) => {
    expect(() => valuesWith(settings)).toThrow(UserError);
    expect(() => valuesWith(settings)).toThrow(sentence);
  });
});

describe('the print of the expansion link', () => {
  it.each(['A3', 'A4'])('says all sizes once, on %s', async (paper) => {
    const prints = await printsOf('expansion-link', { paper });
    expect(prints.map(({ record }) => record.hand)).toEqual(['right', 'left']);
    for (const { record } of prints) {
      expect(record.checks.filter(({ passed }) => !passed)).toEqual([]);
      const texts = record.dimensions.map(({ text }) => text.join(' '));
      expect(texts.filter((text) => text.includes('R4.000'))).toEqual(['R4.000 ±.002 middle of slot and holes; centre on trunnion line']);
      expect(texts.filter((text) => text.startsWith('slot'))).toEqual(['slot .2500 H8 (.2509/.2500) wide THRU, ends full R walls Ra 0.8']);
      expect(texts.filter((text) => text.startsWith('1.250'))).toEqual(['1.250 ±.002']);
      expect(texts.filter((text) => text.includes('90° ▲'))).toHaveLength(1);
    }
  });
});
