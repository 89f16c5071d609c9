import { beforeAll, describe, expect, it } from 'vitest';
import nut from '../../generators/parts/gland-nut.js';
import { coreOf } from '../../generators/parts/gland-nut/core.js';
import type { Values } from '../../engine/part/parameters.js';
import { resolveValues } from '../../engine/part/resolve.js';
import { solidOf } from '../../engine/solid/build.js';
import { compareHands } from '../../engine/solid/hand.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { volumeOf } from '../../engine/solid/measure.js';
import { UserError } from '../../engine/units/user-error.js';
import type { Part } from '../../engine/part/part.js';
import { findingsIn, of, sentence, withOperation, without } from '../plan/order/found.js';
import { planned } from '../plan/planned.js';
import { faultsOf } from '../sheet/crossings.js';
import { makePrintsOf } from '../support/print.js';
import { builtWith, frustum, integral, staysSound } from './soundness.js';

const { PI, sqrt, acos, tan } = Math;

/** Area of a regular hexagon, across flats, that a circle about its middle leaves outside. */
function outside(flats: number, radius: number): number {
  const apothem = flats / 2;
  const hexagon = 2 * sqrt(3) * apothem * apothem;
  const segment = radius <= apothem ? 0 : radius * radius * acos(apothem / radius) - apothem * sqrt(radius * radius - apothem * apothem);
  return hexagon - PI * radius * radius + 6 * segment;
}

/** Hexagon bar less its bores, groove and chamfers. */
function volumeByFormula(p: Values<typeof nut.parameters>): number {
  const [core, rod, groove, circle] = [coreOf(p.thread) / 2, p.rod / 2, (p.thread.major + p.grooveOver) / 2, p.cornerCircle / 2];
  const slope = tan(PI / 6);
  const radiusAt = (depth: number): number => circle + depth / slope;
  const [flat, corner] = [(p.flats / 2 - circle) * slope, (p.flats / sqrt(3) - circle) * slope];
  const corners = integral((t) => outside(p.flats, radiusAt(t)), 0, flat) + integral((t) => outside(p.flats, radiusAt(t)), flat, corner);
  const bar = (sqrt(3) / 2) * p.flats * p.flats * p.length;
  const mouth = frustum(p.mouthChamfer, core, core + p.mouthChamfer) - PI * core * core * p.mouthChamfer;
  return bar - 2 * corners - mouth - PI * (core * core * p.shoulderDepth + (groove * groove - core * core) * p.grooveWidth + rod * rod * (p.length - p.shoulderDepth));
}

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

describe('the gland nut', () => {
  const part = builtWith(nut);

  it('has the volume of its closed formulas', () => {
    expect(volumeOf(solidOf(kernel, part, { segments: 256 })) / volumeByFormula(resolveValues(nut, {}, undefined))).toBeCloseTo(1, 3);
  });

  it('is one sound piece of that volume with other sizes, and so is its mirror image', { timeout: 120_000 }, () => {
    staysSound(kernel, nut, volumeByFormula, 32, 16);
  });

  it('is cut from hexagon bar and is not handed', () => {
    expect(part.stock).toMatchObject({ shape: 'hexagon', section: [14.2875] });
    // The bar without a cut: its section is three times the square of its half width, over the sine of 60 degrees.
    expect(volumeOf(solidOf(kernel, part, { through: 0 }))).toBeCloseTo((sqrt(3) / 2) * 14.2875 ** 2 * part.stock.length, 6);
    expect(compareHands(kernel, part).handed).toBe(false);
  });

  it('threads as far as the groove before the shoulder, by either way', () => {
    for (const threading of ['tap', 'screw-cut'] as const) {
      const thread = builtWith(nut, { threading }).operations.flatMap(({ cuts }) => cuts).flatMap(({ sizes }) => sizes).find(({ kind }) => kind === 'internal-thread');
      expect(thread).toMatchObject({ method: threading, from: [0, 0, 0], to: [0, 0, expect.closeTo(0.25 * 25.4, 9)], core: 8.76 });
    }
  });

  it('bores for three quarters of the thread', () => {
    // Whitworth form, 32 to the inch: 3/8 in less 0.75 of twice 0.6403 pitches.
    expect(coreOf(resolveValues(nut, {}, undefined).thread)).toBeCloseTo(9.525 - 0.75 * 2 * 0.6403 * (25.4 / 32), 2);
  });

  it.each([
    ['flats', '7/16 in', 'the flats keep a wall over the groove'],
    ['rod', '0.3 in', 'the shoulder presses on the packing'],
    ['shoulderDepth', '0.4 in', 'an end stays beyond the shoulder'],
    ['grooveWidth', '0.03 in', 'the tap runs out in the groove'],
    ['shoulderDepth', '0.18 in', 'the thread has four turns at least'],
    ['mouthChamfer', '0.01 in', 'the mouth is wider than the thread'],
    ['cornerCircle', '0.4 in', 'the end face outside the mouth keeps a wall'],
    ['cornerCircle', '0.56 in', 'the circle of the corners lies inside the flats'],
  ])('refuses %s %s', (name, text, sentence) => {
    const build = () => builtWith(nut, { [name]: text });
    expect(build).toThrow(UserError);
    expect(build).toThrow(sentence);
  });
});

describe('settings of the gland nut', () => {
  const rows = async (number: number): Promise<readonly (readonly string[])[]> => (await planned('gland-nut', number)).blocks.flatMap((block) => (block.kind === 'table' ? block.rows : []));
  const lines = async (number: number): Promise<string> => (await planned('gland-nut', number)).blocks.flatMap((block) => (block.kind === 'lines' ? block.lines : [])).join(' ');

  it('give both walls of the groove', async () => {
    expect((await rows(50))[0]!.slice(-3, -1)).toEqual(['\u2212.2500', '\u2212.3125']);
  });

  it('count the turns of the thread', async () => {
    expect(await lines(70)).toContain('Full thread from the mouth to Z \u2212.2500: .2500 long, 8 turns.');
  });

  it('say how the tool stands for the corners, and when to stop', async () => {
    expect(await lines(20)).toContain('30\u00b0 to the face, 60\u00b0 from the axis of the lathe; in until the circle on the face is \u2300.5300.');
  });

  it('part off at the speed of parting', async () => {
    expect((await planned('gland-nut', 80)).cutters.map(({ kind }) => kind)).toEqual(['parting']);
  });
});

describe.each(['in', 'mm'] as const)('the print in %s', (units) => {
  it('on A4 is complete and without overlap', { timeout: 120_000 }, async () => {
    const [print, ...others] = await makePrintsOf('gland-nut', { paper: 'A4', units });
    expect(others).toEqual([]);
    const { record, drawing } = print!;
    expect(record.checks.filter(({ passed }) => !passed)).toEqual([]);
    expect(record.checks.map(({ name }) => name)).toEqual(expect.arrayContaining(['x', 'y', 'z'].map((axis) => `distances along ${axis} complete and single`)));
    expect(drawing.sheets.flatMap(faultsOf).map(({ pair, first, second }) => `${pair}: ${first} / ${second}`)).toEqual([]);
    const said = record.dimensions.flatMap(({ text }) => text);
    expect(said).toEqual(expect.arrayContaining(units === 'in' ? ['.5625 A/F', '30\u00b0 to \u2300.530', '3/8x32 ME', '\u2300.385'] : ['14.288 A/F', '30\u00b0 to \u230013.462', '3/8x32 ME', '\u23009.779']));
  });
});

describe('the order of the gland nut', () => {
  const depth = (settings: Readonly<Record<string, string>>, spoil: (part: Part) => Part = (part) => part): readonly string[] =>
    of(findingsIn(spoil(builtWith(nut, settings))), 'tap depth', 'fatal').map((finding) => sentence(finding.sentence));

  it('leaves the tool room in the groove', () => {
    expect([depth({}), depth({ threading: 'screw-cut' })]).toEqual([[], []]);
  });

  it('is found out where a second tap is the last, or the bore comes after the thread', () => {
    // Two pitches of groove; the lead of a second tap is four (table of the blind-hole sum).
    expect(depth({}, (part) => withOperation(part, 70, (operation) => ({ ...operation, cutter: { name: 'second tap' } })))).toEqual([
      '3/8x32 ME ends 1.59 before the shoulder, 2 pitches, and the lead of a second tap wants 4: it jams against the shoulder; make the groove wider or the thread shorter',
    ]);
    expect(depth({}, (part) => without(part, 40))).toEqual(['There is no bore yet for the thread 3/8x32 ME (bore)']);
  });
});
