import { unit } from '../../engine/geometry/vector.js';
import type { Form } from '../../engine/part/form.js';
import type { TaggedForm } from '../../engine/solid/tagged-form.js';
import { blindHole } from './crosshead-forms.js';
import { arc, block, frameTo, halfSpace, line, rod, worldFrame } from './forms.js';

/** What a body is made of. */
export interface Forms {
  readonly stock: TaggedForm[];
  readonly removed: TaggedForm[];
}

export const forms = (stock: Form, ...removed: Form[]): Forms => ({
  stock: [{ cut: 'stock', form: stock }],
  removed: removed.map((form, i) => ({ cut: `cut${i + 1}`, form })),
});

/** A stepped shaft: cone, shoulder with fillet, rounded end, a bore across and one askew, a flat along and one aslant, a centre hole. */
export const shaftForms = (): Forms =>
  forms(
    {
      kind: 'revolution',
      frame: worldFrame,
      outline: [
        line([0, 0], [4, 0], 'low end'),
        line([4, 0], [4, 6], 'journal'),
        line([4, 6], [6, 8], 'cone'),
        line([6, 8], [6, 18], 'body'),
        line([6, 18], [4, 18], 'shoulder'),
        arc([4, 18], [3, 19], [4, 19], 'right', 'fillet'),
        line([3, 19], [3, 28], 'neck'),
        arc([3, 28], [2, 29], [2, 28], 'left', 'round'),
        line([2, 29], [0, 29], 'high end'),
        line([0, 29], [0, 0], 'axis'),
      ],
    },
    rod(frameTo([0, -10, 12], [0, 1, 0]), 2, -1, 21),
    rod(frameTo([0, 0, 24], unit([1, 0.3, 0.2])), 0.8, -20, 20),
    halfSpace([0, 5, 0], [0, 1, 0]),
    halfSpace([-5, 0, 9], [-Math.cos(0.3), 0, Math.sin(0.3)]),
    blindHole([0, 0, 0], [0, 0, 1], 1.2, 4),
  );

/** A block with equal bores that cross, a bore into them, a pocket with a ball end, a ring groove of round bottom, a bevel. */
export const manifoldForms = (): Forms =>
  forms(
    block([-12, -12, -12], [12, 12, 12]),
    rod(frameTo([0, 0, 0], [1, 0, 0]), 3, -13, 13),
    rod(frameTo([0, 0, 0], [0, 1, 0]), 3, -13, 13),
    rod(frameTo([0, 1, 0], [0, 0, 1]), 2, 0, 13),
    {
      kind: 'revolution',
      frame: frameTo([8, -8, 12], [0, 0, 1]),
      outline: [
        line([0, 1], [0, -5], 'axis'),
        arc([0, -5], [3, -2], [0, -2], 'left', 'ball'),
        line([3, -2], [3, 1], 'wall'),
        line([3, 1], [0, 1], 'air'),
      ],
    },
    {
      kind: 'revolution',
      frame: frameTo([-6, -5, 12], [0, 0, 1]),
      outline: [
        arc([2, 0], [4, 0], [3, 0], 'left', 'ring'),
        line([4, 0], [4, 1], 'outer wall'),
        line([4, 1], [2, 1], 'air'),
        line([2, 1], [2, 0], 'inner wall'),
      ],
    },
    halfSpace([10, 10, 0], unit([1, 1, 0])),
  );
