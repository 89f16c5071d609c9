import { describe, expect, it } from 'vitest';
import { scale, type Vector3 } from '../../../engine/geometry/vector.js';
import { contradictionIn } from '../../../engine/part/check-references.js';
import { movedForm } from '../../../engine/part/moved.js';
import type { Part } from '../../../engine/part/part.js';
import { laddersOf } from '../../../engine/plan/rehearsal/ladder.js';
import { ladderPiece } from '../../../engine/plan/rehearsal/ladder-piece.js';
import { likenessOf } from '../../../engine/plan/rehearsal/likeness.js';
import { testPieceOf } from '../../../engine/plan/rehearsal/piece.js';
import { formsOfRegion, regionOf } from '../../../engine/plan/rehearsal/region.js';
import { lengthAlong, shiftOf, sideBySide } from '../../../engine/plan/rehearsal/side-by-side.js';
import { statesOf } from '../../../engine/plan/states/state.js';
import { removedForms, solidOf, stockForms } from '../../../engine/solid/build.js';
import { loadKernel } from '../../../engine/solid/kernel.js';
import type { TaggedForm } from '../../../engine/solid/tagged-form.js';
import { builtInNames } from '../../support/built-in-names.js';
import { builtInPart } from '../../support/built-in-part.js';
import { loadOpenCascade, shapeVolume, type OpenCascade, type Shape } from '../../support/open-cascade.js';
import { formShape } from '../../support/open-cascade-forms.js';

const kernel = await loadKernel();
const names = await builtInNames();
const trials = 3;

describe.each(names)('three trials of an operation of the %s', (name) => {
  it('stand side by side, each like the part and clear of the others, or are made in turn for a reason', async () => {
    const part = await builtInPart(name);
    const states = statesOf(kernel, part);
    for (const state of states) {
      if (regionOf(kernel, part, state) === undefined) continue;
      const { number } = state.operation;
      const piece = testPieceOf(kernel, part, { rehearse: [number], trials }, undefined, states);
      if (piece.beside === undefined) {
        expect([number, piece.whyInTurn!.length > 10]).toEqual([number, true]);
        expect(piece.part.quantity).toBe(trials);
        continue;
      }
      const { axis, pitch } = piece.beside;
      expect(contradictionIn(piece.part)).toBe(undefined);
      expect(lengthAlong(piece.part, axis)).toBeCloseTo(lengthAlong(piece.single, axis) + (trials - 1) * Math.abs(pitch), 6);
      expect(piece.part.stock.length).toBeCloseTo(piece.barLength, 6);
      const likeness = likenessOf(kernel, piece);
      expect(likeness.map(({ trial, alike }) => [number, trial, alike])).toEqual([1, 2, 3].map((trial) => [number, trial, true]));
      // The rehearsed operation takes as much at each.
      const [one, all] = [piece.single, piece.part].map((each) => statesOf(kernel, each).find(({ operation }) => operation.number === number)!.removed) as [number, number];
      expect(all / trials).toBeCloseTo(one, 2);
    }
  }, 120_000);
});

describe('trials side by side', () => {
  it('are offered for what is milled and drilled on flat bar, along the bar or across it', async () => {
    const part = await builtInPart('crosshead');
    const states = statesOf(kernel, part);
    const of = (number: number) => testPieceOf(kernel, part, { rehearse: [number], trials }, undefined, states);
    expect([of(170).beside?.axis, of(190).beside?.axis]).toEqual(['z', 'z']);
    // The pocket is milled from the end of the bar: the trials stand across it.
    expect(of(100).beside?.axis).toBe('x');
    expect(of(20).whyInTurn).toBe('operation 10 turns the work');
    expect(testPieceOf(kernel, await builtInPart('crosshead-pin'), { rehearse: [90], trials }, undefined).whyInTurn).toBe('the blank is a round bar, which turns about one axis');
    expect(testPieceOf(kernel, await builtInPart('connecting-rod'), { rehearse: [40], trials }, undefined).whyInTurn).toBe('operation 40 is done in a fixture, which holds one piece');
  }, 60_000);

  it('are less like the part where they stand nearer to each other', async () => {
    const part = await builtInPart('crosshead');
    const piece = testPieceOf(kernel, part, { rehearse: [170], trials }, undefined);
    const near = { axis: piece.beside!.axis, pitch: piece.beside!.pitch * 0.7 };
    expect(likenessOf(kernel, { ...piece, beside: near, part: sideBySide(piece.single, near, trials) }).some(({ alike }) => !alike)).toBe(true);
  }, 60_000);

  // OpenCascade, a boundary-representation kernel from the registry, works it out from the exact forms.
  it.each([['crosshead', 170], ['crosshead', 190], ['connecting-rod', 10], ['valve-rod-fork', 60]] as const)('are found alike by an exact kernel: the last one of operation %2$s of the %1$s', async (name, number) => {
    const oc = await loadOpenCascade();
    const part = await builtInPart(name);
    const piece = testPieceOf(kernel, part, { rehearse: [number], trials }, undefined);
    const back = scale(shiftOf(piece.beside!, trials), -1);
    for (const region of formsOfRegion(piece.regions[0]!))
      for (const through of [number - 1, number]) {
        const real = exactIn(oc, region, part, through, [0, 0, 0]);
        const trial = exactIn(oc, region, piece.part, through, back);
        const only = [new oc['BRepAlgoAPI_Cut_3'](real, trial).Shape(), new oc['BRepAlgoAPI_Cut_3'](trial, real).Shape()].map((shape: Shape) => Math.abs(shapeVolume(oc, shape)));
        expect(Math.max(...only), `${region.cut}, through ${through}`).toBeLessThan(1e-3);
      }
  }, 240_000);
});

/** What of a part, moved, lies in a region after some operations. */
function exactIn(oc: OpenCascade, region: TaggedForm, part: Part, through: number, by: Vector3): Shape {
  const shape = ({ form }: TaggedForm): Shape => formShape(oc, movedForm(form, by), 400);
  const stock = stockForms(part).map(shape).reduce((all: Shape, next: Shape) => new oc['BRepAlgoAPI_Fuse_3'](all, next).Shape());
  const inside: Shape = new oc['BRepAlgoAPI_Common_3'](stock, formShape(oc, region.form, 400)).Shape();
  return removedForms(part, through).reduce((left: Shape, each) => new oc['BRepAlgoAPI_Cut_3'](left, shape(each)).Shape(), inside);
}

describe('a ladder', () => {
  it('has at each place the drill or the mouth of its rung, in the solid too', async () => {
    const part = await builtInPart('crosshead');
    const states = statesOf(kernel, part);
    for (const number of [100, 170, 190]) {
      const ladder = laddersOf(part, part.operations.find((operation) => operation.number === number)!, undefined)[0]!;
      const plain = testPieceOf(kernel, part, { rehearse: [number], trials: ladder.rungs.length }, undefined, states);
      const piece = ladderPiece(plain, ladder);
      expect(contradictionIn(piece.part)).toBe(undefined);
      expect(likenessOf(kernel, piece).every(({ alike }) => alike)).toBe(true);
      const solid = solidOf(kernel, piece.part);
      const operations = piece.part.operations.map((operation) => operation.number);
      expect([...operations].sort((a, b) => a - b)).toEqual(operations);
      if (ladder.kind === 'drills') {
        for (const { drill } of ladder.rungs) expect(solid.surfaces.some((surface) => surface.kind === 'cylinder' && Math.abs(2 * surface.radius - drill.diameter) < 1e-6)).toBe(true);
        continue;
      }
      // Cones of one angle whose points stand off each other by half the difference of their mouths over the tangent.
      const points = solid.surfaces.flatMap((surface) => (surface.kind === 'cone' && Math.abs(surface.halfAngle - ladder.angle / 2) < 1e-6 ? [surface.apex[0]] : []));
      const depths = [...new Set(points.map((value) => value.toFixed(4)))].map(Number).sort((a, b) => a - b);
      expect(depths[depths.length - 1]! - depths[0]!).toBeCloseTo(0.4 / 2 / Math.tan((ladder.angle * Math.PI) / 360), 3);
      expect(depths.length).toBe(ladder.rungs.length);
    }
  }, 60_000);
});
