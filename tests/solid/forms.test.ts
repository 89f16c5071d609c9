import { beforeAll, describe, expect, it } from 'vitest';
import type { Form } from '../../engine/part/form.js';
import { formsToSolid } from '../../engine/solid/build.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { volumeOf } from '../../engine/solid/measure.js';
import { arc, block, circleOutline, frameTo, line, polygon, rod, turned, worldFrame } from '../support/forms.js';
import { thinnestFacet, unpairedEdges, worstVertex } from '../support/solid-checks.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const solidOfForm = (form: Form) => formsToSolid(kernel, [{ cut: 'stock', form }], []);
const surfaceOf = (form: Form, face: string) => {
  const solid = solidOfForm(form);
  return solid.surfaces[solid.faces.find(({ tag }) => tag.face === face)?.surface ?? -1];
};

describe('faces know their exact surfaces', () => {
  const frame = frameTo([1, 2, 3], [0, 0, 1]);
  const shaft: Form = {
    kind: 'revolution',
    frame,
    outline: [
      line([0, 0], [4, 0], 'end'),
      line([4, 0], [4, 5], 'body'),
      line([4, 5], [2, 7], 'taper'),
      arc([2, 7], [0, 9], [0, 7], 'left', 'dome'),
      line([0, 9], [0, 0], 'axis'),
    ],
  };

  it('of a turned form: plane, cylinder, cone and ball; the axis makes none', () => {
    expect(surfaceOf(shaft, 'end')).toEqual({ kind: 'plane', point: [1, 2, 3], normal: [0, 0, -1] });
    expect(surfaceOf(shaft, 'body')).toMatchObject({ kind: 'cylinder', axis: [0, 0, 1], radius: 4 });
    const cone = surfaceOf(shaft, 'taper');
    expect(cone).toMatchObject({ kind: 'cone', apex: [1, 2, 12], axis: [0, 0, -1] });
    expect(cone?.kind === 'cone' && cone.halfAngle).toBeCloseTo(45, 12);
    expect(surfaceOf(shaft, 'dome')).toEqual({ kind: 'sphere', centre: [1, 2, 10], radius: 2 });
    expect(surfaceOf(shaft, 'axis')).toBeUndefined();
  });

  it('of an arc off the axis: a ring', () => {
    const ring: Form = { kind: 'revolution', frame, outline: circleOutline([10, 1], 3, 'ring') };
    expect(surfaceOf(ring, 'ring')).toEqual({ kind: 'torus', centre: [1, 2, 4], axis: [0, 0, 1], major: 10, minor: 3 });
  });

  it('of a prism: planes that point out of the material, cylinders along its frame', () => {
    expect(surfaceOf(block([0, 0, 0], [1, 2, 3]), 'right')).toMatchObject({ kind: 'plane', normal: [1, 0, 0] });
    expect(surfaceOf(block([0, 0, 0], [1, 2, 3]), 'bottom')).toMatchObject({ kind: 'plane', normal: [0, 0, -1] });
    const round: Form = {
      kind: 'prism', frame, outline: circleOutline([3, 4], 2, 'wall'), low: 1, high: 5, lowFace: 'low', highFace: 'high',
    };
    const wall = surfaceOf(round, 'wall');
    expect(wall).toMatchObject({ kind: 'cylinder', axis: [0, 0, 1], radius: 2 });
  });

  it('of what is taken away: planes point out of the material that is left', () => {
    const solid = formsToSolid(
      kernel,
      [{ cut: 'stock', form: block([0, 0, 0], [10, 10, 10]) }],
      [{ cut: 'step', form: block([-1, -1, 6], [4, 11, 11]) }],
    );
    const floor = solid.faces.find(({ tag }) => tag.cut === 'step' && tag.face === 'bottom');
    expect(solid.surfaces[floor?.surface ?? -1]).toMatchObject({ kind: 'plane', normal: [0, 0, 1] });
  });
});

describe('left-handed frames', () => {
  const mirrored = { ...worldFrame, x: [-1, 0, 0] as const };
  const outline = polygon([[0, 0], [4, 0], [0, 3]]);
  const wedge: Form = { kind: 'prism', frame: mirrored, outline, low: 0, high: 5, lowFace: 'low', highFace: 'high' };

  it('give bodies that are whole and right side out', () => {
    for (const form of [wedge, rod(mirrored, 2, 0, 5)]) {
      const solid = solidOfForm(form);
      expect(unpairedEdges(solid)).toBe(0);
      expect(volumeOf(solid)).toBeGreaterThan(0);
    }
    expect(volumeOf(solidOfForm(wedge))).toBeCloseTo(30, 9);
    expect(surfaceOf(wedge, 'side3')).toMatchObject({ kind: 'plane', normal: [1, 0, 0] });
  });
});

describe('one surface, however it is described', () => {
  it('is one entry for coplanar faces of different cuts', () => {
    const solid = formsToSolid(
      kernel,
      [{ cut: 'stock', form: block([0, 0, 0], [30, 10, 10]) }],
      [
        { cut: 'a', form: block([-1, -1, 4], [10, 11, 11]) },
        { cut: 'b', form: rod(frameTo([25, 5, 11], [0, 0, -1]), 3, -1, 7) },
      ],
    );
    const surface = (cut: string, face: string) =>
      solid.faces.find(({ tag }) => tag.cut === cut && tag.face === face)?.surface ?? `no ${cut} ${face}`;
    expect(surface('a', 'bottom')).toBe(surface('b', 'high'));
    expect(surface('a', 'right')).not.toBe(surface('stock', 'right'));
  });

  it('is one entry for a bore met from both ends, and another for one a hundredth larger', () => {
    const bores = [rod(frameTo([5, 5, 0], [0, 0, 1]), 2, -1, 3), rod(frameTo([5, 5, 10], [0, 0, -1]), 2, -1, 3)];
    const wider = rod(frameTo([5, 5, 5], [0, 0, 1]), 2.01, -2.5, 2.5);
    const solid = formsToSolid(
      kernel,
      [{ cut: 'stock', form: block([0, 0, 0], [10, 10, 10]) }],
      [...bores, wider].map((form, i) => ({ cut: `bore${i}`, form })),
    );
    const walls = solid.faces.filter(({ tag }) => tag.face === 'wall').map(({ surface }) => surface);
    expect(walls).toHaveLength(3);
    expect(new Set(walls).size).toBe(2);
  });
});

it('coaxial cuts askew to the axes meet without splinters', () => {
  const axis = frameTo([10, 10, 10], [0.6, 0, 0.8]);
  const solid = formsToSolid(
    kernel,
    [{ cut: 'stock', form: block([0, 0, 0], [20, 20, 20]) }],
    [
      { cut: 'bore', form: rod(axis, 3, -30, 30) },
      { cut: 'mouth', form: turned(axis, [[0, 0], [9, 9], [9, 30], [0, 30]]) },
      { cut: 'far mouth', form: turned(axis, [[0, -30], [9, -30], [9, -9], [0, 0]]) },
    ],
  );
  expect(unpairedEdges(solid)).toBe(0);
  expect(worstVertex(solid)).toBeLessThan(1e-9);
  expect(thinnestFacet(solid)).toBeGreaterThan(1e-4);
});

describe('forms that are no body are refused', () => {
  const bad = (form: Form) => () => solidOfForm(form);
  const prism = { kind: 'prism', frame: worldFrame, low: 0, high: 1, lowFace: 'low', highFace: 'high' } as const;

  it('an open outline', () => {
    const outline = [line([0, 0], [1, 0], 'a'), line([1, 0], [0, 1], 'b'), line([0, 2], [0, 0], 'c')];
    expect(bad({ ...prism, outline })).toThrow(new RangeError('the outline is open between "b" and "c"'));
  });

  it('a clockwise outline', () => {
    const outline = polygon([[0, 0], [0, 1], [1, 0]]);
    expect(bad({ ...prism, outline })).toThrow(
      new RangeError('the outline with "side1" encloses nothing or runs clockwise'),
    );
  });

  it('an arc whose ends have different radii', () => {
    const outline = [line([0, 0], [2, 0], 'a'), arc([2, 0], [0, 3], [0, 0], 'left', 'b'), line([0, 3], [0, 0], 'c')];
    expect(bad({ ...prism, outline })).toThrow(new RangeError('the arc "b" does not end on its circle'));
  });

  it('an outline across the axis that it is turned about', () => {
    expect(bad(turned(worldFrame, [[-1, 0], [2, 0], [2, 1], [-1, 1]]))).toThrow(
      new RangeError('the outline with "side1" crosses the axis that it is turned about'),
    );
  });

  it('a prism without height, and no stock', () => {
    expect(bad({ ...prism, high: 0, outline: polygon([[0, 0], [1, 0], [0, 1]]) })).toThrow(
      new RangeError('the prism with "low" has no height'),
    );
    expect(() => formsToSolid(kernel, [], [])).toThrow(new RangeError('a solid needs at least one form of stock'));
  });
});

it('a filled section keeps points that lie on a straight side', () => {
  const outline = polygon([[0, 0], [1, 0], [2, 0], [4, 0], [4, 1], [4, 2], [4, 3], [2, 3], [0, 3], [0, 1]]);
  const form: Form = { kind: 'prism', frame: worldFrame, outline, low: 0, high: 1, lowFace: 'low', highFace: 'high' };
  expect(volumeOf(solidOfForm(form))).toBeCloseTo(12, 9);
});
