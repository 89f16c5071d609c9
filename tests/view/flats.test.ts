import { beforeAll, describe, expect, it } from 'vitest';
import type { Form } from '../../engine/part/form.js';
import type { Vector3 } from '../../engine/geometry/vector.js';
import { formsToSolid } from '../../engine/solid/build.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import type { Solid } from '../../engine/solid/model.js';
import { reflectSolid } from '../../engine/solid/reflect.js';
import { flatDiagonals } from '../../engine/view/flats.js';
import { project } from '../../engine/view/project.js';
import { solidOf } from '../../engine/solid/build.js';
import { builtInPart } from '../support/built-in-part.js';
import { block, frameTo, halfSpace, rod, turned, worldFrame } from '../support/forms.js';
import { forms } from '../support/view-forms.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const solidFrom = (stock: Form, ...removed: Form[]): Solid => {
  const all = forms(stock, ...removed);
  return formsToSolid(kernel, all.stock, all.removed);
};
const along = (toward: Vector3, up: Vector3 = [0, 0, 1]) => ({ toward, up });

/** The diagonals as pairs of points, in the order of their coordinates. */
const ends = (solid: Solid, toward: Vector3) =>
  flatDiagonals(solid, along(toward)).map(({ drawn }) => {
    if (drawn.kind !== 'line') throw new Error('a diagonal is straight');
    return [drawn.from, drawn.to].sort((a, b) => a[2] - b[2]).map((point) => point.map((value) => Number(value.toFixed(4)) + 0));
  });

const bar = rod(worldFrame, 5, 0, 40);
/** A spanner flat in the middle of the bar: 6 long, 4 from the axis. */
const spannerFlat = block([-10, 4, 15], [10, 10, 21]);

describe('the mark of a flat on a round', () => {
  it('is two diagonals from corner to corner of the flat, by Pythagoras', () => {
    const solid = solidFrom(bar, spannerFlat);
    // A chord 4 from the middle of a circle of 5 is 3 to each side.
    expect(ends(solid, [0, -1, 0]).sort((a, b) => a[0]![0]! - b[0]![0]!)).toEqual([
      [[-3, 4, 15], [3, 4, 21]],
      [[3, 4, 15], [-3, 4, 21]],
    ]);
  });

  it('stands only where the flat is seen in its true shape, from outside', () => {
    const solid = solidFrom(bar, spannerFlat);
    for (const toward of [[0, 1, 0], [1, 0, 0], [-1, 0, 0]] as const) expect(ends(solid, toward)).toEqual([]);
    expect(flatDiagonals(solid, { toward: [0, 0, -1], up: [0, 1, 0] })).toEqual([]);
  });

  it('stands on each of the four sides of a square, whose edges meet', () => {
    const beyond = 5;
    const half = 3;
    const square = [block([-9, half, 30], [9, 9, 41]), block([-9, -9, 30], [9, -half, 41]), block([half, -9, 30], [9, 9, 41]), block([-9, -9, 30], [-half, 9, 41])];
    const solid = solidFrom(rod(worldFrame, beyond, 0, 40), ...square);
    for (const toward of [[0, 1, 0], [0, -1, 0], [1, 0, 0], [-1, 0, 0]] as const) expect(ends(solid, toward).map((pair) => pair.map(([, , z]) => z))).toEqual([[30, 40], [30, 40]]);
  });

  it('is seen in the view as two thin lines, in mirror images too', () => {
    const solid = solidFrom(bar, spannerFlat);
    for (const each of [solid, reflectSolid(solid, 'x')]) {
      const camera = along([0, -1, 0]);
      const marks = project(each, camera, { added: flatDiagonals(each, camera) }).curves.filter(({ role }) => role === 'flat');
      expect(marks.length).toBe(2);
      for (const { visible, geometry } of marks) {
        expect(visible).toBe(true);
        expect(geometry.kind === 'line' && Math.hypot(geometry.to[0] - geometry.from[0], geometry.to[1] - geometry.from[1])).toBeCloseTo(Math.hypot(6, 6), 3);
      }
    }
  });

  it.each<readonly [string, () => Solid]>([
    ['the floor of a keyway', () => solidFrom(bar, block([-2, 3, 10], [2, 10, 25]))],
    ['a tongue inside a bore', () => solidFrom(turned(worldFrame, [[3, 0], [6, 0], [6, 20], [3, 20]]), block([-1, 2, 5], [1, 10, 15]))],
    ['the side of a block with a turned boss', () => solidFrom({ ...block([-10, -10, 0], [10, 10, 30]) }, turned(worldFrame, [[5, 20], [20, 20], [20, 31], [5, 31]]))],
    ['a plate with a rounded end', () => solidFrom(rod(worldFrame, 5, 0, 40), halfSpace([-4.9, 0, 0], [-1, 0, 0]), halfSpace([0, 1, 0], [0, 1, 0]), halfSpace([0, -1, 0], [0, -1, 0]), rod(worldFrame, 4, -1, 41))],
  ])('does not stand on %s', (_, make) => {
    for (const toward of [[0, 1, 0], [0, -1, 0], [1, 0, 0], [-1, 0, 0]] as const) expect(ends(make(), toward)).toEqual([]);
  });

  it('does not stand on a flat out of which a hole is cut', () => {
    expect(ends(solidFrom(bar, spannerFlat, rod(frameTo([0, 0, 18], [0, 1, 0]), 2, -20, 20)), [0, -1, 0])).toEqual([]);
  });

  it('stands on no face of the parts that come with the program, none of which has a flat on a round', async () => {
    for (const name of ['crosshead', 'crosshead-pin', 'expansion-link', 'connecting-rod', 'valve-rod-fork', 'gland-nut']) {
      const solid = solidOf(kernel, await builtInPart(name));
      for (const toward of [[0, 1, 0], [0, -1, 0], [1, 0, 0], [-1, 0, 0], [0, 0, 1], [0, 0, -1]] as const) expect([name, flatDiagonals(solid, along(toward, toward[2] === 0 ? [0, 0, 1] : [0, 1, 0])).length]).toEqual([name, 0]);
    }
  });
});
