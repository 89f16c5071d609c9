import { describe, expect, it } from 'vitest';
import type { Curve2 } from '../../../engine/geometry/curve.js';
import { add, dot, scale, subtract, unit, type Vector2 } from '../../../engine/geometry/vector.js';
import { mirrorPart } from '../../../engine/part/mirror.js';
import { finishedLines } from '../../../engine/sheet/plan/picture/finished-lines.js';
import { coveringOf } from '../../../engine/sheet/plan/picture/covering.js';
import { planCamera } from '../../../engine/sheet/plan/picture/plan-camera.js';
import { threadCurves } from '../../../engine/sheet/plan/picture/thread-curves.js';
import { projectPoint } from '../../../engine/view/camera.js';
import { dashSpans } from '../../../engine/export/dash-spans.js';
import { formsToSolid } from '../../../engine/solid/build.js';
import { loadKernel } from '../../../engine/solid/kernel.js';
import { block } from '../../../engine/sheet/plan/picture/blocks.js';
import { lineWidth } from '../../../engine/export/strokes.js';
import { builtInPart } from '../../support/built-in-part.js';
import { plansOf } from '../../support/plan.js';
import { isStroke, isText } from '../crossings.js';
import { pointsOn } from '../paper-geometry.js';

const parts = ['crosshead', 'crosshead-pin', 'expansion-link', 'connecting-rod', 'valve-rod-fork', 'gland-nut'];
const line = (from: Vector2, to: Vector2): Curve2 => ({ kind: 'line', from, to });
const nowhere = (): boolean => false;

describe('the lines of the finished part', () => {
  it('leave out what lies on a line of the work, and run on where one crosses', () => {
    const drawn = [line([0, 0], [20, 0]), line([5, -5], [5, 5])];
    const [long, ...others] = finishedLines([line([0, 0.05], [40, 0.05]), line([-10, 3], [15, 3])], 1, drawn, nowhere, 'picture');
    const curves = [long, ...others].map((item) => (item?.kind === 'stroke' && item.curve.kind === 'line' ? item.curve : undefined));
    // The first is free only beyond 20, the second crosses an outline and stays whole.
    expect(curves.find((curve) => curve?.from[1] === 3)).toEqual(line([-10, 3], [15, 3]));
    const free = curves.find((curve) => curve?.from[1] === 0.05);
    expect(free?.from[0]).toBeGreaterThan(20);
    expect(free?.from[0]).toBeLessThan(21);
    expect(free?.to).toEqual([40, 0.05]);
    expect(curves.length).toBe(2);
  });

  it('leave out what is too short to be told, what runs close beside a longer one, and what is covered', () => {
    expect(finishedLines([line([0, 0], [3, 0])], 1, [], nowhere, 'picture')).toEqual([]);
    expect(finishedLines([line([0, 0], [3, 0])], 2, [], nowhere, 'picture').length).toBe(1);
    expect(finishedLines([line([0, 0], [20, 0]), line([0, 0.5], [18, 0.5]), line([0, 2], [18, 2])], 1, [], nowhere, 'picture').length).toBe(2);
    expect(finishedLines([line([0, 0], [20, 0])], 1, [], ([x]) => x < 10, 'picture').map((item) => item.kind === 'stroke' && item.curve)).toEqual([line([expect.closeTo(10, 0) as number, 0], [20, 0])]);
  });

  it('are hidden by what stands before the part, and by nothing behind it', async () => {
    const kernel = await loadKernel();
    const frame = { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] } as const;
    const part = formsToSolid(kernel, [{ cut: 'stock', form: block(frame, [0, 10], [0, 10], [0, 10]) }], []);
    const jaw = (z: readonly [number, number]) => formsToSolid(kernel, [{ cut: 'held by', form: block(frame, [0, 5], [0, 10], z) }], []);
    const camera = { toward: [0, 0, -1], up: [0, 1, 0] } as const;
    const before = coveringOf(jaw([12, 14]), part, camera);
    expect([before([2, 5]), before([8, 5])]).toEqual([true, false]);
    expect(coveringOf(jaw([-14, -12]), part, camera)([2, 5])).toBe(false);
  });

  it('are dashed with dots even where they are short, and drawn as narrow as the work', () => {
    for (const [paper, width] of [['A4', 0.25], ['A3', 0.35]] as const) {
      expect(lineWidth('finished', paper)).toBe(width);
      for (const length of [3.4, 5, 8, 13, 40]) {
        const spans = dashSpans('short double-chain', length, false, width);
        expect(spans.length).toBeGreaterThanOrEqual(4);
        expect((spans.length - 1) % 3).toBe(0);
        spans.slice(1).forEach((span, i) => {
          expect(span.from - spans[i]!.to).toBeGreaterThanOrEqual(0.45);
        });
      }
    }
  });

  it.each(parts)('of the %s lie within the picture of the work while metal is to go, and are gone when none is', async (name) => {
    let shown = 0;
    for (const { drawing, record } of await plansOf(name)) {
      const last = record.operations.reduce((end, { number, volume }) => (volume.removed > 0 ? number : end), 0);
      for (const { number, sheet } of record.operations) {
        const { items } = drawing.sheets[sheet - 1]!;
        const picture = items.filter(isStroke).filter(({ group }) => group === `picture ${number}`);
        const finished = picture.filter(({ role }) => role === 'finished');
        if (number >= last) expect([number, finished.length]).toEqual([number, 0]);
        shown += finished.length > 0 ? 1 : 0;
        const told = items.some((item) => isText(item) && item.text === 'finished part, in metal to go');
        if (finished.length > 0) expect([number, told]).toEqual([number, true]);
        const work = picture.filter(({ role }) => role === 'work' || role === 'visible').flatMap(({ curve }) => pointsOn(curve, 0.5));
        const reach = (at: 0 | 1): readonly [number, number] => [Math.min(...work.map((p) => p[at])), Math.max(...work.map((p) => p[at]))];
        for (const at of [0, 1] as const) {
          const [low, high] = reach(at);
          for (const { curve } of finished) for (const point of pointsOn(curve, 0.5)) expect(point[at] > low - 0.3 && point[at] < high + 0.3).toBe(true);
        }
      }
    }
    expect(shown).toBeGreaterThan(0);
  });
});

describe.each(['crosshead', 'crosshead-pin', 'gland-nut', 'valve-rod-fork'])('the threads in the pictures of the %s', (name) => {
  it('lie on root or crest and are open circles about the axis, for both hands', async () => {
    const right = await builtInPart(name);
    for (const part of [right, mirrorPart(right)])
      for (const setUp of part.setUps) {
        const camera = planCamera(setUp);
        for (const operation of part.operations)
          for (const size of operation.cuts.flatMap(({ sizes }) => sizes)) {
            if (size.kind !== 'external-thread' && size.kind !== 'internal-thread' && size.kind !== 'tapping') continue;
            const axis = size.kind === 'tapping' ? size.direction : unit(subtract(size.to, size.from));
            const circle = size.kind === 'external-thread' ? size.root / 2 : size.thread.major / 2;
            for (const { drawn, role } of threadCurves(part, operation, camera)) {
              if (drawn.kind !== 'arc' || role !== 'thread') continue;
              expect(drawn.radius).toBeCloseTo(circle, 9);
              expect(drawn.sweep).toBe(270);
              expect(dot(drawn.x, axis)).toBeCloseTo(0, 9);
              expect(dot(drawn.y, axis)).toBeCloseTo(0, 9);
              // The gap is at the upper right of the ellipse.
              const gap = projectPoint(camera, add(scale(drawn.x, Math.SQRT1_2), scale(drawn.y, Math.SQRT1_2)));
              expect(gap[0] + gap[1]).toBeGreaterThan(0);
            }
          }
      }
  });

  it('are drawn thin once they are cut, and not before', async () => {
    const part = await builtInPart(name);
    const cutting = part.operations.filter(({ cuts }) => cuts.some(({ sizes }) => sizes.some(({ kind }) => kind === 'tapping' || kind === 'external-thread' || kind === 'internal-thread'))).map(({ number }) => number);
    let shown = 0;
    for (const { drawing, record } of await plansOf(name))
      for (const { number, sheet } of record.operations) {
        const lines = drawing.sheets[sheet - 1]!.items.filter(isStroke).filter(({ group, role }) => group === `picture ${number}` && role === 'thread');
        if (number < cutting[0]!) expect([number, lines.length]).toEqual([number, 0]);
        if (number === cutting[0]) expect([number, lines.length > 0]).toEqual([number, true]);
        shown += lines.length;
      }
    expect(shown).toBeGreaterThan(1);
  });
});
