import { beforeAll, describe, expect, it } from 'vitest';
import { mirrorPart } from '../../engine/part/mirror.js';
import { boxOf } from '../../engine/solid/box.js';
import { formsToSolid, removedForms, stockForms } from '../../engine/solid/build.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { volumeOf } from '../../engine/solid/measure.js';
import type { TaggedForm } from '../../engine/solid/tagged-form.js';
import { builtInPart } from '../support/built-in-part.js';
import { crossheadForms, drilledBlock } from '../support/crosshead-forms.js';
import { frameTo, halfSpace, rod, turned } from '../support/forms.js';
import { formsToShape } from '../support/open-cascade-forms.js';
import { loadOpenCascade, shapeBox, shapeIsValid, shapeVolume, type OpenCascade } from '../support/open-cascade.js';
import { plateWithHoles } from '../support/plate.js';
import { unpairedEdges, volumeBound, worstVertex } from '../support/solid-checks.js';

interface Body {
  readonly stock: readonly TaggedForm[];
  readonly removed: readonly TaggedForm[];
}

/** A turned taper askew to all axes, flattened: its box touches circles that lie slantwise. */
const slantedTaper = (): Body => {
  const frame = frameTo([1, 2, 3], [0.48, 0.6, 0.64]);
  return {
    stock: [{ cut: 'stock', form: turned(frame, [[0, 0], [5, 0], [3, 8], [0, 8]]) }],
    removed: [
      { cut: 'flat', form: halfSpace([1, 2, -0.2], [0, 0, -1]) },
      { cut: 'bore', form: rod(frame, 1, -1, 9) },
    ],
  };
};

const partBody = async (name: string, left: boolean): Promise<Body> => {
  const part = await builtInPart(name);
  const handed = left ? mirrorPart(part) : part;
  return { stock: stockForms(handed), removed: removedForms(handed) };
};

const bodies: readonly [string, () => Body | Promise<Body>][] = [
  ['a crosshead-like body', () => crossheadForms()],
  ['a block drilled in three directions', drilledBlock],
  ['a slanted taper', slantedTaper],
  ['a plate of 25 holes', () => plateWithHoles(25)],
  ['the built-in crosshead', () => partBody('crosshead', false)],
  ['the built-in crosshead of the left hand', () => partBody('crosshead', true)],
  ['the built-in crosshead pin', () => partBody('crosshead-pin', false)],
];

let kernel: Kernel;
let oc: OpenCascade;
beforeAll(async () => {
  [kernel, oc] = await Promise.all([loadKernel(), loadOpenCascade()]);
});

// OpenCascade works with exact surfaces and its own booleans; nothing but the forms is common to the two sides.
describe.each(bodies)('%s agrees with an exact kernel', (_, make) => {
  it('in volume within the stated facet error, and in its box to a thousandth of a millimetre', async () => {
    const { stock, removed } = await make();
    const shape = formsToShape(oc, stock, removed);
    expect(shapeIsValid(oc, shape)).toBe(true);
    const solid = formsToSolid(kernel, stock, removed);
    const exact = shapeVolume(oc, shape);
    expect(Math.abs(volumeOf(solid) - exact)).toBeLessThanOrEqual(volumeBound(solid));
    const finer = formsToSolid(kernel, stock, removed, { segments: 192 });
    expect(Math.abs(volumeOf(finer) - exact)).toBeLessThanOrEqual(volumeBound(finer));
    const box = boxOf(solid);
    const { low, high } = shapeBox(oc, shape);
    for (const k of [0, 1, 2] as const) {
      expect(Math.abs(box.low[k] - (low[k] ?? NaN))).toBeLessThan(1e-3);
      expect(Math.abs(box.high[k] - (high[k] ?? NaN))).toBeLessThan(1e-3);
    }
    expect(unpairedEdges(solid)).toBe(0);
    expect(worstVertex(solid)).toBeLessThan(1e-5);
  });
});
