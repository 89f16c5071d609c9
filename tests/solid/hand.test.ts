import { beforeAll, describe, expect, it } from 'vitest';
import type { Vector3 } from '../../engine/geometry/vector.js';
import { mirrorPart } from '../../engine/part/mirror.js';
import type { Form } from '../../engine/part/form.js';
import { formsToSolid, solidOf } from '../../engine/solid/build.js';
import { symmetricDifferenceVolume } from '../../engine/solid/combine.js';
import { compareHands, compareSolidHands } from '../../engine/solid/hand.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { determinant } from '../../engine/solid/matrix.js';
import { volumeOf } from '../../engine/solid/measure.js';
import { moveSolid } from '../../engine/solid/transform.js';
import { builtInPart } from '../support/built-in-part.js';
import { blindHole, crossheadForms, drilledBlock } from '../support/crosshead-forms.js';
import { block, frameTo, polygon, rod, turned, worldFrame } from '../support/forms.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const compare = (stock: Form, cuts: Readonly<Record<string, Form>> = {}) => {
  const removed = Object.entries(cuts).map(([cut, form]) => ({ cut, form }));
  return compareSolidHands(kernel, formsToSolid(kernel, [{ cut: 'stock', form: stock }], removed, { segments: 32 }), 'x');
};

/** Four holes in a disc, a quarter turn apart, each leaning along the rim; `sides` tells from which face each is drilled. */
function leaningHoles(sides: readonly (1 | -1)[]): Record<string, Form> {
  const holes = sides.map((side, i): [string, Form] => {
    const angle = (i * Math.PI) / 2 + 0.3;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const size = Math.hypot(0.3, 1);
    const way: Vector3 = [(-0.3 * s) / size, (0.3 * c) / size, -side / size];
    return [`hole${i}`, blindHole([8 * c, 8 * s, 5 * side], way, 1, 4)];
  });
  return Object.fromEntries(holes);
}
const disc = rod(worldFrame, 12, -5, 5);

describe('parts that are their own mirror image', () => {
  it('a block, drilled through the middle of its sides', () => {
    const { stock, removed } = drilledBlock();
    expect(compareSolidHands(kernel, formsToSolid(kernel, stock, removed, { segments: 32 }), 'y').handed).toBe(false);
  });

  it('a body of revolution askew to the axes', () => {
    const frame = frameTo([1, 2, 3], [0.6, 0.64, 0.48]);
    expect(compare(turned(frame, [[0, 0], [5, 0], [3, 8], [0, 8]])).handed).toBe(false);
  });

  it('an angle section askew to the axes', () => {
    const outline = polygon([[0, 0], [10, 0], [10, 2], [3, 2], [3, 7], [0, 7]]);
    const frame = frameTo([1, 2, 3], [0.6, 0.64, 0.48]);
    const angle: Form = { kind: 'prism', frame, outline, low: 0, high: 4, lowFace: 'low', highFace: 'high' };
    expect(compare(angle).handed).toBe(false);
  });

  it('a part that has no mirror plane, but a quarter turn with reflection (S4)', () => {
    expect(compare(disc, leaningHoles([1, -1, 1, -1]))).toMatchObject({ handed: false, leftOver: 0, makers: [] });
  });

  it('a part that has no mirror plane, but is even about its centre', () => {
    const cuts = {
      one: blindHole([4, 3, 10], [0, 0, -1], 1, 4),
      other: blindHole([16, 13, 0], [0, 0, 1], 1, 4),
    };
    expect(compare(block([0, 0, 0], [20, 16, 10]), cuts).handed).toBe(false);
  });

  it('a crosshead without what is on one side only', () => {
    const { stock, removed } = crossheadForms(false);
    const even = removed.filter(({ cut }) => cut !== 'oil hole');
    expect(compareSolidHands(kernel, formsToSolid(kernel, stock, even, { segments: 32 }), 'x').handed).toBe(false);
  });

  it('the built-in crosshead pin', async () => {
    expect(compareHands(kernel, await builtInPart('crosshead-pin')).handed).toBe(false);
  });
});

describe('parts with a hand', () => {
  it('four holes that all lean the same way round', () => {
    const result = compare(disc, leaningHoles([1, 1, 1, 1]));
    expect(result.handed).toBe(true);
    expect(result.makers.map(({ cut }) => cut).sort()).toEqual(['hole0', 'hole1', 'hole2', 'hole3']);
  });

  it('one tiny hole off the middle planes of a block makes the hand, by twice its volume', () => {
    const hole = blindHole([4, 3, 10], [0, 0, -1], 0.4, 3);
    const result = compare(block([0, 0, 0], [20, 16, 10]), {
      'tiny hole': hole,
      'corner step': block([-1, 9, 7], [21, 17, 11]),
    });
    expect(result.handed).toBe(true);
    expect(result.makers).toHaveLength(1);
    expect(result.makers[0]?.cut).toBe('tiny hole');
    const depth = 3 + 0.4 / Math.tan((59 * Math.PI) / 180) / 3;
    const volume = 2 * Math.PI * 0.16 * depth;
    expect(result.leftOver / volume).toBeGreaterThan(0.85);
    expect(result.leftOver / volume).toBeLessThan(1.01);
  });

  it('a hole a tenth of a millimetre out of place', () => {
    const even = { left: rod(frameTo([5, 8, 0], [0, 0, 1]), 2, -1, 11), right: rod(frameTo([15, 8, 0], [0, 0, 1]), 2, -1, 11) };
    const steps = { front: block([-1, -1, 6], [21, 4, 11]) };
    const stock = block([0, 0, 0], [20, 16, 10]);
    expect(compare(stock, { ...even, ...steps }).handed).toBe(false);
    const odd = { ...even, right: rod(frameTo([15, 8.1, 0], [0, 0, 1]), 2, -1, 11) };
    const result = compare(stock, { ...odd, ...steps });
    expect(result.handed).toBe(true);
    expect(result.makers.map(({ cut }) => cut).sort()).toEqual(['left', 'right']);
  });

  it('a crosshead, by the cuts that are on one side only and no other', () => {
    const { stock, removed } = crossheadForms();
    const result = compareSolidHands(kernel, formsToSolid(kernel, stock, removed, { segments: 32 }), 'x');
    expect(result.handed).toBe(true);
    expect(result.makers.map(({ cut }) => cut)).toEqual(['side', 'tapped pad', 'oil hole']);
    const total = result.makers.reduce((sum, { volume }) => sum + volume, 0);
    expect(total).toBeCloseTo(result.leftOver, 9);
  });
});

it('the rotation takes the mirrored part to where what is left over is the whole difference', async () => {
  const part = await builtInPart('crosshead');
  const result = compareHands(kernel, part);
  expect(result.handed).toBe(true);
  expect(determinant(result.rotation.matrix)).toBeCloseTo(1, 12);
  const own = solidOf(kernel, part, { segments: 32 });
  const mirrored = moveSolid(result.rotation, solidOf(kernel, mirrorPart(part), { segments: 32 }));
  const difference = symmetricDifferenceVolume(kernel, own, mirrored);
  expect(Math.abs(difference - result.leftOver)).toBeLessThan(0.01 * result.leftOver + 1);
});

it('the mirrored part has the same volume as the part, and its own hand is the other', async () => {
  const part = await builtInPart('crosshead');
  const left = mirrorPart(part);
  const volume = volumeOf(solidOf(kernel, part));
  expect(Math.abs(volumeOf(solidOf(kernel, left)) - volume)).toBeLessThan(1e-6 * volume);
  expect(compareHands(kernel, left).makers.map(({ cut }) => cut)).toEqual(
    compareHands(kernel, part).makers.map(({ cut }) => cut),
  );
});
