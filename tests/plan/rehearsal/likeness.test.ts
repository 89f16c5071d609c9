import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolveValues } from '../../../engine/part/resolve.js';
import { likenessOf } from '../../../engine/plan/rehearsal/likeness.js';
import { testPieceOf } from '../../../engine/plan/rehearsal/piece.js';
import { formsOfRegion } from '../../../engine/plan/rehearsal/region.js';
import { statesOf } from '../../../engine/plan/states/state.js';
import { stockForms, removedForms } from '../../../engine/solid/build.js';
import { loadKernel } from '../../../engine/solid/kernel.js';
import { volumeOf } from '../../../engine/solid/measure.js';
import type { Part } from '../../../engine/part/part.js';
import type { TaggedForm } from '../../../engine/solid/tagged-form.js';
import { UserError } from '../../../engine/units/user-error.js';
import { builtInPart } from '../../support/built-in-part.js';
import { loadOpenCascade, shapeVolume, type OpenCascade, type Shape } from '../../support/open-cascade.js';
import { formShape } from '../../support/open-cascade-forms.js';
import { generatorOf } from '../../support/print.js';
import { builtInNames } from '../../support/built-in-names.js';
import { everyPiece } from './pieces.js';

const kernel = await loadKernel();
const names = await builtInNames();

describe.each(names)('a test piece of the %s', (name) => {
  it('is like the part wherever one of its operations is rehearsed', async () => {
    const part = await builtInPart(name);
    for (const piece of everyPiece(kernel, part))
      for (const { operation, alike, before, after } of likenessOf(kernel, piece)) {
        expect(alike, `operation ${operation}: ${JSON.stringify([before, after])}`).toBe(true);
      }
  });

  it('is no larger than the part’s own blank, and keeps the numbers of the operations', async () => {
    const part = await builtInPart(name);
    const own = part.stock.section.reduce((product, side) => product * side, part.stock.length);
    for (const piece of everyPiece(kernel, part)) {
      const size = piece.part.stock.section.reduce((product, side) => product * side, piece.part.stock.length);
      expect(size).toBeLessThanOrEqual(own * 1.001);
      const [number] = piece.rehearsed;
      expect(piece.part.operations.find((operation) => operation.number === number)?.cuts.map(({ id }) => id)).toEqual(
        part.operations.find((operation) => operation.number === number)!.cuts.map(({ id }) => id),
      );
    }
  });
});

/** What of stock less some cuts lies in a region, by the exact kernel: cut by cut, so that the body stays small. */
function exactIn(oc: OpenCascade, region: TaggedForm, part: Part, through: number): Shape {
  const stock = stockForms(part).map(({ form }) => formShape(oc, form, 400)).reduce((all: Shape, next: Shape) => new oc['BRepAlgoAPI_Fuse_3'](all, next).Shape());
  const inside: Shape = new oc['BRepAlgoAPI_Common_3'](stock, formShape(oc, region.form, 400)).Shape();
  return removedForms(part, through).reduce((left: Shape, { form }) => new oc['BRepAlgoAPI_Cut_3'](left, formShape(oc, form, 400)).Shape(), inside);
}

describe('an exact kernel from the registry', () => {
  // OpenCascade finds the same: what differs between part and piece inside the region is empty, before the cut and after it.
  it.each([...names.map((name) => [name, undefined] as const), ['crosshead', 100] as const])('agrees on the likeness of the %s at operation %s', async (name, number) => {
    const oc = await loadOpenCascade();
    const part = await builtInPart(name);
    const pieces = everyPiece(kernel, part);
    const piece = pieces.find(({ rehearsed }) => rehearsed[0] === number) ?? pieces[Math.floor(pieces.length / 2)]!;
    const at = piece.rehearsed[0]!;
    for (const region of formsOfRegion(piece.regions[0]!))
      for (const through of [at - 1, at]) {
        const [real, trial] = [exactIn(oc, region, part, through), exactIn(oc, region, piece.part, through)];
        const only = [new oc['BRepAlgoAPI_Cut_3'](real, trial).Shape(), new oc['BRepAlgoAPI_Cut_3'](trial, real).Shape()].map((shape: Shape) => Math.abs(shapeVolume(oc, shape)));
        expect(Math.max(...only), `${region.cut}, through ${through}`).toBeLessThan(1e-3);
      }
  }, 240_000);
});

describe('random crossheads', () => {
  const length = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });

  it('have test pieces that are like them', async () => {
    const generator = await generatorOf('crosshead');
    fc.assert(
      fc.property(length(1.4, 2.2), length(0.55, 0.64), length(20, 40), fc.constantFrom('0-80', '1-72', '2-56'), fc.integer({ min: 2, max: 4 }), (long, span, angle, thread, count) => {
        let part: Part;
        try {
          part = generator.build(resolveValues(generator, { length: `${long.toFixed(3)} in`, grooveSpan: `${span.toFixed(4)} in`, bevelAngle: angle.toFixed(1), padThread: thread, padCount: String(count) }, undefined));
        } catch (error) {
          if (error instanceof UserError) return;
          throw error;
        }
        const states = statesOf(kernel, part);
        const taps = part.operations.filter(({ cuts }) => cuts.some(({ sizes }) => sizes.some(({ kind }) => kind === 'tapping')));
        for (const { number } of taps.slice(-2)) {
          const piece = testPieceOf(kernel, part, { rehearse: [number] }, undefined, states);
          expect(likenessOf(kernel, piece).every(({ alike }) => alike)).toBe(true);
        }
      }),
      { numRuns: 6, seed: 41 },
    );
  }, 120_000);
});

describe('likeness', () => {
  it('tells by how much a piece falls short where a cut that it needs is missing', async () => {
    const part = await builtInPart('crosshead');
    const piece = testPieceOf(kernel, part, { rehearse: [100] }, undefined);
    const without: Part = { ...piece.part, operations: piece.part.operations.map((operation) => ({ ...operation, cuts: operation.cuts.filter(({ id }) => id !== 'rod-pocket') })) };
    const [spoiled] = likenessOf(kernel, { ...piece, part: without });
    expect(spoiled!.alike).toBe(false);
    expect(spoiled!.before.extra).toBeGreaterThan(10);
    expect(spoiled!.before.missing).toBeLessThan(1e-3);
  });

  it('counts the room of a box by its sides', async () => {
    const part = await builtInPart('crosshead');
    const piece = testPieceOf(kernel, part, { rehearse: [10] }, undefined);
    const { boxes } = piece.regions[0]!;
    const [likeness] = likenessOf(kernel, piece);
    const volumes = boxes.map(({ bounds: { low, high } }) => [0, 1, 2].reduce((product, i) => product * (high[i]! - low[i]!), 1));
    expect(likeness!.before.region).toBeLessThanOrEqual(volumes.reduce((sum, volume) => sum + volume, 0) + 1e-6);
    expect(likeness!.before.region).toBeGreaterThanOrEqual(Math.max(...volumes) - 1e-6);
  });

  it('leaves what it cuts: removed volumes are those of the part', async () => {
    const part = await builtInPart('crosshead');
    const states = statesOf(kernel, part);
    for (const number of [80, 120, 160]) {
      const piece = testPieceOf(kernel, part, { rehearse: [number] }, undefined, states);
      const own = statesOf(kernel, piece.part).find(({ operation }) => operation.number === number)!;
      const real = states.find(({ operation }) => operation.number === number)!;
      expect(own.removed).toBeCloseTo(real.removed, 3);
      expect(volumeOf(own.after)).toBeLessThan(volumeOf(real.after));
    }
  });
});
