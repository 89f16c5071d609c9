import { describe, expect, it } from 'vitest';
import type { Vector2 } from '../../engine/geometry/vector.js';
import { Board } from '../../engine/sheet/place/board.js';
import { placeFarRadius, type FarRadiusTask } from '../../engine/sheet/place/far-radius.js';

const outline = { left: -8, right: 8, bottom: -40, top: 40 };
/** An arc through the origin about a centre far to the right. */
const task: FarRadiusTask = { id: 'far', lines: ['R200', 'centre on the line'], centre: [200, 0], radius: 200, from: 172, to: 188 };

const linesOf = (board: Board, given = task): readonly (readonly [Vector2, Vector2])[] =>
  (placeFarRadius('view', given, outline, board)?.items ?? []).flatMap((item) => (item.kind === 'stroke' && item.curve.kind === 'line' ? [[item.curve.from, item.curve.to] as const] : []));

describe('a radius whose centre lies off the view', () => {
  it('begins on the arc and aims at the centre, jogs, and goes on the same way to its text', () => {
    const [first, jog, second, shoulder] = linesOf(new Board());
    const angleOf = ([a, b]: readonly [Vector2, Vector2]): number => Math.atan2(b[1] - a[1], b[0] - a[0]);
    const [tip] = first!;
    expect(Math.hypot(tip[0] - 200, tip[1])).toBeCloseTo(200, 9);
    expect(angleOf(first!)).toBeCloseTo(Math.atan2(-tip[1], 200 - tip[0]), 9);
    expect(angleOf(second!)).toBeCloseTo(angleOf(first!), 9);
    expect(Math.abs(angleOf(jog!) - angleOf(first!))).toBeGreaterThan(0.5);
    expect(angleOf(shoulder!)).toBeCloseTo(0, 9);
    // It stops well short of the centre.
    expect(shoulder![1][0]).toBeLessThan(100);
  });

  it('does not lie along the line of symmetry through the centre', () => {
    const [first] = linesOf(new Board());
    expect(Math.abs(first![0][1])).toBeGreaterThan(2);
  });

  it('has its text outside the view, and gives way to what stands there', () => {
    const free = placeFarRadius('view', task, outline, new Board())!;
    expect(free.box.left).toBeGreaterThan(outline.right);
    const board = new Board();
    board.add({ boxes: [free.box], ink: [] });
    const second = placeFarRadius('view', task, outline, board)!;
    const apart = second.box.left >= free.box.right || second.box.right <= free.box.left || second.box.bottom >= free.box.top || second.box.top <= free.box.bottom;
    expect(apart).toBe(true);
  });

  it('finds no place where all is taken', () => {
    const board = new Board();
    board.add({ boxes: [{ left: -300, right: 300, bottom: -300, top: 300 }], ink: [] });
    expect(placeFarRadius('view', task, outline, board)).toBeUndefined();
  });
});
