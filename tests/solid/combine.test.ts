import { beforeAll, describe, expect, it } from 'vitest';
import { boxOf } from '../../engine/solid/box.js';
import { formsToSolid } from '../../engine/solid/build.js';
import { cutSolid, intersectionVolume, removedSolid, symmetricDifferenceVolume } from '../../engine/solid/combine.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { areaOfFace, massProperties, volumeOf } from '../../engine/solid/measure.js';
import type { Solid } from '../../engine/solid/model.js';
import { block, halfSpace, rod, worldFrame } from '../support/forms.js';
import { unpairedEdges, worstVertex } from '../support/solid-checks.js';

let kernel: Kernel;
let bored: Solid;
beforeAll(async () => {
  kernel = await loadKernel();
  bored = formsToSolid(
    kernel,
    [{ cut: 'stock', form: block([-10, -8, 0], [10, 8, 12]) }],
    [{ cut: 'bore', form: rod(worldFrame, 3, -1, 13) }],
  );
});

const faceNamed = (solid: Solid, cut: string, face: string): number =>
  solid.faces.findIndex(({ tag }) => tag.cut === cut && tag.face === face);

describe('a section', () => {
  it('halves the body, keeps its tags, and tags the plane', () => {
    const half = cutSolid(kernel, bored, [{ cut: 'section', form: halfSpace([0, 0, 0], [0, -1, 0], 'A') }]);
    expect(volumeOf(half)).toBeCloseTo(volumeOf(bored) / 2, 6);
    expect(unpairedEdges(half)).toBe(0);
    expect(worstVertex(half)).toBeLessThan(1e-9);
    const section = faceNamed(half, 'section', 'A');
    expect(areaOfFace(half, section)).toBeCloseTo(2 * 7 * 12, 6);
    expect(half.surfaces[half.faces[section]?.surface ?? -1]).toMatchObject({ kind: 'plane', normal: [0, -1, 0] });
    expect(faceNamed(half, 'bore', 'wall')).toBeGreaterThanOrEqual(0);
    expect(faceNamed(half, 'stock', 'front')).toBe(-1);
    expect(boxOf(half)).toEqual({ low: [-10, 0, 0], high: [10, 8, 12] });
  });

  it('through empty air leaves the body as it is', () => {
    const whole = cutSolid(kernel, bored, [{ cut: 'section', form: halfSpace([50, 0, 0], [1, 0, 0], 'A') }]);
    expect(volumeOf(whole)).toBeCloseTo(volumeOf(bored), 6);
    expect(faceNamed(whole, 'section', 'A')).toBe(-1);
  });
});

it('what a tool removes and what it leaves make up the body', () => {
  const tool = [{ cut: 'step', form: block([4, -20, 6], [20, 20, 20]) }];
  const left = cutSolid(kernel, bored, tool);
  const chips = removedSolid(kernel, bored, tool);
  expect(volumeOf(chips)).toBeCloseTo(6 * 16 * 6, 6);
  expect(volumeOf(left) + volumeOf(chips)).toBeCloseTo(volumeOf(bored), 6);
  const floor = (solid: Solid) => solid.surfaces[solid.faces[faceNamed(solid, 'step', 'bottom')]?.surface ?? -1];
  expect(floor(left)).toMatchObject({ kind: 'plane', normal: [0, 0, 1] });
  expect(floor(chips)).toMatchObject({ kind: 'plane', normal: [0, 0, -1] });
});

it('a body cut away wholly is an empty solid', () => {
  const nothing = cutSolid(kernel, bored, [{ cut: 'all', form: block([-20, -20, -20], [20, 20, 20]) }]);
  expect(nothing.triangles).toHaveLength(0);
  expect(volumeOf(nothing)).toBe(0);
});

it('common and differing volumes of two overlapping blocks', () => {
  const solid = (x: number) => formsToSolid(kernel, [{ cut: 'stock', form: block([x, 0, 0], [x + 4, 5, 6]) }], []);
  expect(intersectionVolume(kernel, solid(0), solid(3))).toBeCloseTo(30, 4);
  expect(symmetricDifferenceVolume(kernel, solid(0), solid(3))).toBeCloseTo(180, 4);
  expect(symmetricDifferenceVolume(kernel, solid(0), solid(0))).toBeCloseTo(0, 6);
});

it('mass properties of a block: centre, and a squared / 12 each way', () => {
  const solid = formsToSolid(kernel, [{ cut: 'stock', form: block([100, 2, -3], [104, 8, 6]) }], []);
  const { volume, centroid, moments } = massProperties(solid);
  expect(volume).toBeCloseTo(216, 9);
  centroid.forEach((value, k) => expect(value).toBeCloseTo([102, 5, 1.5][k] ?? NaN, 9));
  moments.forEach((row, r) =>
    row.forEach((value, c) => {
      const side = [4, 6, 9][r] ?? NaN;
      expect(value).toBeCloseTo(r === c ? (216 * side ** 2) / 12 : 0, 6);
    }),
  );
});
