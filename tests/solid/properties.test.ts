import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Vector3 } from '../../engine/geometry/vector.js';
import type { Form } from '../../engine/part/form.js';
import { formsToSolid, removedForms, solidOf } from '../../engine/solid/build.js';
import { intersectionVolume, symmetricDifferenceVolume } from '../../engine/solid/combine.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { volumeOf } from '../../engine/solid/measure.js';
import type { TaggedForm } from '../../engine/solid/tagged-form.js';
import { builtInPart } from '../support/built-in-part.js';
import { blindHole } from '../support/crosshead-forms.js';
import { block, frameTo, halfSpace, rod, turned } from '../support/forms.js';
import { unpairedEdges, verticesOff, worstMiddle, worstVertex } from '../support/solid-checks.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const stock: TaggedForm[] = [{ cut: 'stock', form: block([0, 0, 0], [30, 20, 15]) }];

/** Lengths in steps of a tenth, so that faces often meet exactly. */
const tenths = (low: number, high: number) => fc.integer({ min: 10 * low, max: 10 * high }).map((n) => n / 10);
const place = fc.tuple(tenths(0, 30), tenths(0, 20), tenths(0, 15));
const direction = fc.constantFrom<Vector3>(
  [1, 0, 0], [0, -1, 0], [0, 0, 1], [0.6, 0.8, 0], [0, 0.8, -0.6], [0.48, 0.6, 0.64],
);
const cutter: fc.Arbitrary<Form> = fc.oneof(
  fc.tuple(place, direction, tenths(1, 4)).map(([at, way, radius]) => rod(frameTo(at, way), radius, -50, 50)),
  fc.tuple(place, direction, tenths(0.5, 3), tenths(2, 10)).map(([at, way, radius, depth]) => blindHole(at, way, radius, depth)),
  fc.tuple(place, tenths(1, 12), tenths(1, 12), tenths(1, 12)).map(([at, x, y, z]) => block(at, [at[0] + x, at[1] + y, at[2] + z])),
  fc.tuple(place, direction, tenths(1, 5)).map(([at, way, size]) => turned(frameTo(at, way), [[0, -size], [2 * size, size], [0, size]])),
  fc.tuple(tenths(26, 29), direction).map(([x, way]) => halfSpace([x, 18, 13], [Math.abs(way[0]), Math.abs(way[1]), Math.abs(way[2])])),
);
const cutters = fc.array(cutter, { minLength: 1, maxLength: 6 }).map((forms) =>
  forms.map((form, i): TaggedForm => ({ cut: `cut${i}`, form })),
);

describe('any block with any cuts', () => {
  it('is closed, lies on its surfaces, and every facet has its face', () => {
    fc.assert(
      fc.property(cutters, (removed) => {
        const solid = formsToSolid(kernel, stock, removed);
        const cuts = new Set(['stock', ...removed.map(({ cut }) => cut)]);
        expect(unpairedEdges(solid)).toBe(0);
        // A corner where surfaces graze each other may have no place on all of them near by; it is off by a facet's error.
        expect(verticesOff(solid, 1e-5)).toBeLessThanOrEqual(2);
        expect(worstVertex(solid)).toBeLessThanOrEqual(solid.facetError + 1e-5);
        expect(worstMiddle(solid)).toBeLessThanOrEqual(solid.facetError + 1e-5);
        for (const face of solid.faceOfTriangle) expect(cuts).toContain(solid.faces[face]?.tag.cut);
        expect(solid.faceOfTriangle).toHaveLength(solid.triangles.length / 3);
      }),
      { seed: 20, numRuns: 60 },
    );
  });

  it('has less volume than before, by what the cut has in common with it', () => {
    fc.assert(
      fc.property(cutters, cutter, (removed, next) => {
        const before = formsToSolid(kernel, stock, removed);
        const after = formsToSolid(kernel, stock, [...removed, { cut: 'next', form: next }]);
        const lost = volumeOf(before) - volumeOf(after);
        // Where a cut ends in the middle of another's facet, putting its edge on the true surface moves it a little.
        const slack = 0.01 + 40 * before.facetError + 40 * after.facetError;
        expect(lost).toBeGreaterThan(-slack);
        expect(symmetricDifferenceVolume(kernel, before, after)).toBeLessThan(lost + 2 * slack);
        expect(intersectionVolume(kernel, before, after)).toBeGreaterThan(volumeOf(after) - slack);
      }),
      { seed: 21, numRuns: 20 },
    );
  });
});

it.each(['crosshead', 'crosshead-pin', 'expansion-link', 'connecting-rod'])('each operation of the built-in %s leaves no more than it found', async (name) => {
  const part = await builtInPart(name);
  let before = volumeOf(solidOf(kernel, part, { through: 0, segments: 32 }));
  let forms = 0;
  for (const { number } of part.operations) {
    const count = removedForms(part, number).length;
    const after = volumeOf(solidOf(kernel, part, { through: number, segments: 32 }));
    if (count === forms) expect(after).toBe(before);
    else expect(after).toBeLessThan(before);
    [before, forms] = [after, count];
  }
});

it('the same forms give the same solid to the last bit', () => {
  const removed = [{ cut: 'a', form: rod(frameTo([9, 9, 9], [0.48, 0.6, 0.64]), 3, -50, 50) }];
  expect(formsToSolid(kernel, stock, removed)).toEqual(formsToSolid(kernel, stock, removed));
});
