import { UserError } from '../../units/user-error.js';
import { findMaterial } from '../materials.js';
import { figures, say, type Sum } from './sum.js';

export const ringPinch: Sum = {
  name: 'ring-pinch',
  summary: 'how far three jaws push a thin ring out of round',
  example: { outside: '50mm', bore: '46mm', length: '10mm', force: '300N', material: 'cast iron' },
  source: 'thin ring under three equal loads: in at the jaws 0.0160, out between them 0.0138, times F R^3 / (E I) (textbook ring formulas)',
  arguments: [
    { name: 'outside', kind: 'length', about: 'outside diameter', required: true },
    { name: 'bore', kind: 'length', about: 'inside diameter', required: true },
    { name: 'length', kind: 'length', about: 'length of the ring along its axis', required: true },
    { name: 'force', kind: 'force', about: 'force of each jaw', default: '500 N' },
    { name: 'material', kind: 'material', about: 'material of the ring', required: true },
  ],
  compute(values, context) {
    const [outside, bore] = [values.number('outside'), values.number('bore')];
    if (bore >= outside) throw new UserError('the bore must be under the outside diameter.');
    const material = findMaterial(values.text('material'));
    const wall = (outside - bore) / 2;
    const radius = (outside + bore) / 4;
    const unit = (values.number('force') * radius ** 3) / (material.modulus * 1000 * ((values.number('length') * wall ** 3) / 12));
    const [inward, outward] = [0.016 * unit, 0.0138 * unit];
    return {
      result: { inward, outward, outOfRound: inward + outward, thin: wall / radius < 0.2 },
      steps: [
        `mean radius ${say(radius, context)}, wall ${say(wall, context)}: F R^3 / (E I) = ${say(unit, context)}`,
        `in ${say(inward, context)} at each jaw, out ${say(outward, context)} between: ${say(inward + outward, context)} on the radius`,
        `a bore turned true in the chuck comes out three-lobed by this much; two-point micrometers do not show it (${figures(wall / radius, 2)} = wall over radius)`,
      ],
    };
  },
};
