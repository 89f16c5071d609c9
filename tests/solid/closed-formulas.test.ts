import { beforeAll, describe, expect, it } from 'vitest';
import type { Form } from '../../engine/part/form.js';
import { formsToSolid } from '../../engine/solid/build.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { volumeOf } from '../../engine/solid/measure.js';
import { arc, block, circleOutline, frameTo, halfSpace, line, rod, turned, worldFrame } from '../support/forms.js';
import { unpairedEdges, volumeBound } from '../support/solid-checks.js';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const cube = block([0, 0, 0], [20, 20, 20]);
const centred = (height: number) => ({ ...worldFrame, origin: [10, 10, height] as const });

/** A body by its forms and its volume by the formula named beside it. */
const bodies: readonly { name: string; stock: Form; removed: Form[]; volume: number }[] = [
  { name: 'a block', stock: cube, removed: [], volume: 8000 },
  {
    name: 'a block with a hole through it: a cylinder less',
    stock: cube,
    removed: [rod(centred(0), 4, -1, 21)],
    volume: 8000 - Math.PI * 16 * 20,
  },
  {
    name: 'a countersink: the frustum over its hole',
    stock: cube,
    removed: [rod(centred(0), 2, -1, 21), turned(centred(20), [[0, -5], [6, 1], [0, 1]])],
    volume: 8000 - Math.PI * 4 * 17 - (Math.PI * 3 * (25 + 10 + 4)) / 3,
  },
  {
    name: 'a drilled hole: a cylinder and the cone of a 118 degree point',
    stock: cube,
    removed: [
      turned(centred(20), [[0, -12 - 3 / Math.tan(radians(59))], [3, -12], [3, 1], [0, 1]]),
    ],
    volume: 8000 - Math.PI * 9 * (12 + 3 / Math.tan(radians(59)) / 3),
  },
  {
    name: 'a bevel at 15 degrees: a triangular wedge less',
    stock: cube,
    removed: [halfSpace([20, 0, 12], [Math.cos(radians(15)), 0, Math.sin(radians(15))])],
    volume: 8000 - (20 * 8 * 8 * Math.tan(radians(15))) / 2,
  },
  {
    name: 'a shaft with a fillet: the spandrel turned, by the theorem of Pappus',
    stock: {
      kind: 'revolution',
      frame: worldFrame,
      outline: [
        line([0, 0], [8, 0], 'end'),
        line([8, 0], [8, 4], 'flange'),
        line([8, 4], [7, 4], 'shoulder'),
        arc([7, 4], [5, 6], [7, 6], 'right', 'fillet'),
        line([5, 6], [5, 20], 'shaft'),
        line([5, 20], [0, 20], 'top'),
        line([0, 20], [0, 0], 'axis'),
      ],
    },
    removed: [],
    // Square of side 2 less a quarter disc whose centroid is 4 r / (3 pi) from its centre at radius 7.
    volume: Math.PI * (64 * 4 + 25 * 16) + 2 * Math.PI * (4 * 6 - Math.PI * (7 - 8 / (3 * Math.PI))),
  },
  {
    name: 'a ball',
    stock: {
      kind: 'revolution',
      frame: frameTo([3, 1, 2], [0.6, 0.64, 0.48]),
      outline: [arc([0, -5], [0, 5], [0, 0], 'left', 'ball'), line([0, 5], [0, -5], 'axis')],
    },
    removed: [],
    volume: (4 / 3) * Math.PI * 125,
  },
  {
    name: 'a ring: 2 pi squared R r squared',
    stock: { kind: 'revolution', frame: worldFrame, outline: circleOutline([10, 0], 3, 'ring') },
    removed: [],
    volume: 2 * Math.PI ** 2 * 10 * 9,
  },
  {
    name: 'a slot with round ends',
    stock: cube,
    removed: [
      {
        kind: 'prism',
        frame: centred(20),
        outline: [
          line([-4, -3], [4, -3], 'side'),
          arc([4, -3], [4, 3], [4, 0], 'left', 'end'),
          line([4, 3], [-4, 3], 'side'),
          arc([-4, 3], [-4, -3], [-4, 0], 'left', 'end'),
        ],
        low: -6,
        high: 1,
        lowFace: 'floor',
        highFace: 'air',
      },
    ],
    volume: 8000 - 6 * (48 + Math.PI * 9),
  },
  {
    name: 'two equal cylinders crossing: 16 r cubed / 3 in common',
    stock: cube,
    removed: [rod(centred(0), 5, -1, 21), rod(frameTo([0, 10, 10], [1, 0, 0]), 5, -1, 21)],
    volume: 8000 - 2 * Math.PI * 25 * 20 + (16 * 125) / 3,
  },
];

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

describe.each(bodies)('$name', ({ stock, removed, volume }) => {
  const make = (segments: number) =>
    formsToSolid(
      kernel,
      [{ cut: 'stock', form: stock }],
      removed.map((form, i) => ({ cut: `cut${i}`, form })),
      { segments },
    );

  it.each([32, 64, 128])('has its volume within the stated facet error at %i segments', (segments) => {
    const solid = make(segments);
    expect(Math.abs(volumeOf(solid) - volume)).toBeLessThanOrEqual(volumeBound(solid));
    expect(unpairedEdges(solid)).toBe(0);
  });

  it('comes four times as near with twice the segments', () => {
    const coarse = Math.abs(volumeOf(make(64)) - volume);
    const fine = Math.abs(volumeOf(make(128)) - volume);
    expect(fine).toBeLessThanOrEqual(coarse / 3.5 + 1e-4);
  });
});
